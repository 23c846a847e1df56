import { expect, test } from '@playwright/test';
import { allStored, putStored } from './database';
import { type } from './shop-floor';

const LATER = {
  kind: 'part',
  id: 'later',
  format: 99,
  entry: { name: 'Angle plate' },
  new: [1, 2],
};

test('what a newer version wrote, and what is damaged, is named and left, and the rest opens', async ({
  page,
}) => {
  await page.goto('/?example');
  await type(page, 'Right side', '41');
  const address = page.url();
  const part = address.split('/part/')[1]?.split('/')[0];
  const damaged = { kind: 'work', id: 'torn', part, format: 2 };
  await putStored(page, { 'part/later': LATER, [`chain/${part}/work/torn`]: damaged });
  await page.goto(address);
  const notices = page.locator('.notices');
  await expect(notices).toContainText('The part ‘Angle plate’: written by a newer version');
  await expect(notices).toContainText('Work on ‘Example block (invented)’: damaged');
  await expect(page.getByRole('textbox', { name: 'Right side', exact: true })).toHaveValue('41');
  await type(page, 'Left side', '29');
  await page.reload();
  await expect(page.getByRole('textbox', { name: 'Left side', exact: true })).toHaveValue('29');
  const stored = await allStored(page);
  expect(stored['part/later']).toEqual(LATER);
  expect(stored[`chain/${part}/work/torn`]).toEqual(damaged);
});
