import type { PartEntry } from '../../entry/part-entry';
import type { InspectionRecord } from '../../store/records';
import recordStyles from './record.css?inline';

/** What the record is called, as a file: 'Record Cover plate 2024-03-05'. */
export function recordName({ name }: PartEntry, { made }: InspectionRecord): string {
  // Marks that a file's name cannot have anywhere.
  const plain = name.trim().replace(/[\\/:*?"<>|\p{Cc}]+/gu, '-');
  return ['Record', plain, made.slice(0, 10)].filter(Boolean).join(' ');
}

/** Nothing is loaded and nothing runs in the file, whatever stands in it. */
const POLICY = "default-src 'none'; style-src 'unsafe-inline'";

/** The paper as a page of its own: styles and drawings are in it, scripts are not. */
export function recordFile(paper: HTMLElement, name: string): File {
  const page = document.implementation.createHTMLDocument(name);
  const charset = page.createElement('meta');
  charset.setAttribute('charset', 'utf-8');
  const policy = page.createElement('meta');
  policy.httpEquiv = 'Content-Security-Policy';
  policy.content = POLICY;
  const viewport = page.createElement('meta');
  viewport.name = 'viewport';
  viewport.content = 'width=device-width, initial-scale=1';
  // Before all else: a browser looks for the letters' code no further than the first 1024 bytes.
  page.head.prepend(charset, policy, viewport);
  page.body.append(page.importNode(paper, true));
  // A style element made here would be held to the policy of the app itself, which knows no such.
  const [head, body] = [page.head.outerHTML, page.body.outerHTML];
  const styled = head.replace(/<\/head>$/, () => `<style>${recordStyles}</style></head>`);
  const text = `<!doctype html>\n<html lang="en">${styled}${body}</html>\n`;
  return new File([text], `${name}.html`, { type: 'text/html' });
}
