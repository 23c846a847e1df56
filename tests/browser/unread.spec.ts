import { expect, type Page, test } from '@playwright/test';
import { type } from './shop-floor';

/** Puts values into the app's database, as another version of it or a fault might have done. */
async function store(page: Page, values: Readonly<Record<string, unknown>>): Promise<void> {
  await page.evaluate(
    (all) =>
      new Promise<void>((resolve) => {
        const request = indexedDB.open('highedge', 1);
        request.onsuccess = () => {
          const { result: database } = request;
          const transaction = database.transaction('records', 'readwrite');
          for (const [key, value] of Object.entries(all)) {
            transaction.objectStore('records').put(value, key);
          }
          transaction.oncomplete = () => {
            database.close();
            resolve();
          };
        };
      }),
    values,
  );
}

async function storedAt(page: Page, key: string): Promise<unknown> {
  return page.evaluate(
    (wanted) =>
      new Promise<unknown>((resolve) => {
        const request = indexedDB.open('highedge', 1);
        request.onsuccess = () => {
          const { result: database } = request;
          const got = database.transaction('records').objectStore('records').get(wanted);
          got.onsuccess = () => {
            database.close();
            resolve(got.result);
          };
        };
      }),
    key,
  );
}

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
  await store(page, { 'part/later': LATER, [`chain/${part}/work/torn`]: damaged });
  await page.goto(address);
  const notices = page.locator('.notices');
  await expect(notices).toContainText('The part ‘Angle plate’: written by a newer version');
  await expect(notices).toContainText('Work on ‘Example block (invented)’: damaged');
  await expect(page.getByRole('textbox', { name: 'Right side', exact: true })).toHaveValue('41');
  await type(page, 'Left side', '29');
  await page.reload();
  await expect(page.getByRole('textbox', { name: 'Left side', exact: true })).toHaveValue('29');
  expect(await storedAt(page, 'part/later')).toEqual(LATER);
  expect(await storedAt(page, `chain/${part}/work/torn`)).toEqual(damaged);
});
