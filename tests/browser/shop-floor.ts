import { expect, type Locator, type Page } from '@playwright/test';

/** Fills a field as a person does: a tap, then digit by digit. */
export async function type(page: Page, label: string, text: string): Promise<void> {
  const field = page.getByRole('textbox', { name: label, exact: true });
  await field.click();
  await field.press('ControlOrMeta+a');
  await field.pressSequentially(text);
}

/** Taps keys of the app's own keypad. */
export async function tapKeys(page: Page, keys: readonly string[]): Promise<void> {
  for (const key of keys) {
    await page.locator('.keypad').getByRole('button', { name: key, exact: true }).tap();
  }
}

/** Leaves the field first: the keypad goes, and what stood under it moves, before the press and not within it. */
export async function press(target: Locator): Promise<void> {
  await target.evaluate(() => {
    if (document.activeElement instanceof HTMLElement) document.activeElement.blur();
  });
  await target.click();
}

interface NewPart {
  readonly name: string;
  readonly size: readonly [string, string, string];
  /** Squareness of the right side to the bottom, then of the left side. */
  readonly within: string;
}

/** Describes a part standing on its bottom, both sides to be square to it, and goes to its screen. */
export async function describePart(page: Page, part: NewPart): Promise<void> {
  await page.goto('/');
  await press(page.getByRole('button', { name: 'New part' }));
  await type(page, 'Name', part.name);
  await type(page, 'X, left to right', part.size[0]);
  await type(page, 'Y, front to back', part.size[1]);
  await type(page, 'Z, bottom to top', part.size[2]);
  await press(page.getByRole('button', { name: 'Add a requirement' }));
  await type(page, 'Within', part.within);
  await press(page.getByRole('button', { name: 'Add a requirement' }));
  await press(page.getByRole('link', { name: 'To the part', exact: true }));
  await expect(page.getByRole('heading', { level: 1 })).toHaveText(part.name);
}

/** The sheet of the answer for right and left on the bottom. */
export function sides(page: Page) {
  return page.getByRole('region', { name: 'right and left on the bottom', exact: true });
}

/** Says within how much right and left are parallel. */
export async function takeAsParallel(page: Page, within: string): Promise<void> {
  await press(page.getByRole('button', { name: 'Take as parallel' }).first());
  await type(page, 'Parallel within, over the whole face', within);
}

/** Sets the nose comparator's heights and types what it shows on the right and on the left. */
export async function readBothSides(
  page: Page,
  { nose, indicator, right, left }: Record<'nose' | 'indicator' | 'right' | 'left', string>,
): Promise<void> {
  await type(page, 'Nose height', nose);
  await type(page, 'Indicator height', indicator);
  await type(page, 'Right side', right);
  await type(page, 'Left side', left);
}
