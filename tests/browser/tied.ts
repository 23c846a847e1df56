import { expect, type Page } from '@playwright/test';

/**
 * What is said beside a field is tied to it: whoever listens hears it with the field (WCAG 1.3.1, 3.3.1,
 * 4.1.2), and whoever speaks calls it what is written on it (WCAG 2.5.3).
 */
export async function expectTied(page: Page, screen: string): Promise<void> {
  expect(await page.evaluate(findUntied), screen).toEqual([]);
}

/** What is not tied, each told by its markup. */
function findUntied(): readonly string[] {
  const all = <T extends Element>(selector: string) => [...document.querySelectorAll<T>(selector)];
  const idsIn = (element: Element, attribute: string) =>
    element.getAttribute(attribute)?.split(/\s+/).filter(Boolean) ?? [];
  const told = (what: string, elements: readonly Element[]) =>
    elements.map((element) => `${what}: ${element.outerHTML.slice(0, 160)}`);
  const plain = (text: string) => text.replace(/\s+/g, ' ').trim().toLowerCase();

  const REFERENCES = ['describedby', 'errormessage', 'labelledby', 'controls', 'details', 'owns'];
  const attributes = [...REFERENCES.map((name) => `aria-${name}`), 'for', 'list'];
  const astray = attributes.flatMap((attribute) =>
    all(`[${attribute}]`).filter((element) =>
      idsIn(element, attribute).some((id) => all(`#${CSS.escape(id)}`).length !== 1),
    ),
  );
  const twice = all('[id]').filter(({ id }) => all(`#${CSS.escape(id)}`).length !== 1);

  const fields = all<HTMLInputElement>('input, select, textarea');
  const tellersOf = (message: Element) =>
    fields.filter((field) =>
      ['aria-describedby', 'aria-errormessage'].some((by) =>
        idsIn(field, by).includes(message.id || 'none'),
      ),
    );
  const messages = all('.field-message, .field-note, .field-read-as');
  const untied = messages.filter((message) => {
    const own = message.closest('.field')?.querySelector('input, select, textarea');
    const tellers = tellersOf(message);
    return tellers.length === 0 || (own && !tellers.includes(own as HTMLInputElement));
  });
  const unmarked = all('.field-message-wrong').filter((message) =>
    tellersOf(message).some((field) => field.ariaInvalid !== 'true'),
  );
  const unsaid = fields.filter(
    (field) =>
      field.ariaInvalid === 'true' &&
      !all('.field-message-wrong, .note-wrong').some((message) =>
        tellersOf(message).includes(field),
      ),
  );

  const nameOf = (element: HTMLElement) => {
    const by = idsIn(element, 'aria-labelledby').map(
      (id) => document.getElementById(id)?.textContent ?? '',
    );
    const labels = 'labels' in element ? [...(element as HTMLInputElement).labels!] : [];
    const own = labels.length > 0 ? labels.map(({ textContent }) => textContent) : [];
    return plain(by.join(' ') || element.ariaLabel || own.join(' '));
  };
  const nameless = fields.filter((field) => nameOf(field) === '');
  const misnamed = fields.filter(
    (field) =>
      field.checkVisibility() &&
      [...field.labels!].some((label) => !nameOf(field).includes(plain(label.textContent))),
  );
  // A sign in place of a word, such as that of the key for rubbing out, is no label in words.
  const isWritten = (text: string) => /[\p{L}\d]/u.test(text);
  const written = (element: HTMLElement) => {
    const copy = element.cloneNode(true) as HTMLElement;
    for (const unread of copy.querySelectorAll('[aria-hidden="true"]')) unread.remove();
    return plain(copy.textContent ?? '');
  };
  const miscalled = all<HTMLElement>(':is(button, a, summary)[aria-label]').filter(
    (control) =>
      isWritten(written(control)) && !plain(control.ariaLabel ?? '').includes(written(control)),
  );
  return [
    ...told('refers to what is not there, or there twice', astray),
    ...told('two with this id', twice),
    ...told('tied to no field', untied),
    ...told('its field is not marked as wrong', unmarked),
    ...told('marked as wrong without a word', unsaid),
    ...told('without a name', nameless),
    ...told('called otherwise than is written on it', [...misnamed, ...miscalled]),
  ];
}
