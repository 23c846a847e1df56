// @ts-check
/** An invented shop of any size, written into the browser's database as the app would have written it. */

import { load } from './measure.mjs';

/** @type {typeof import('../../../src/entry/kit-entry')} */
const { defaultKit } = await load('./src/entry/kit-entry.ts');

/** The same each time. */
const BEGINNING = Date.UTC(2024, 0, 8, 7);
const DAY = 24 * 3600 * 1000;

/** @typedef {{ parts: number, inspections: number, seatings: number, places: number }} ShopSize */

/**
 * Fills the database of the page, which has to have opened the app. Each inspection has two pairs of
 * sides read `seatings` times each and a micrometer over `places` on both; after each but the last
 * a face is lapped. Readings: 4 times seatings and 2 times places.
 *
 * @param {import('@playwright/test').Page} page
 * @param {ShopSize} size
 */
export async function inventShop(page, size) {
  await page.evaluate(invent, { ...size, kit: defaultKit(), beginning: BEGINNING, day: DAY });
}

/**
 * Runs in the page, so that nothing of it has to travel.
 *
 * @typedef {import('../../../src/entry/kit-entry').KitEntry} KitEntry
 * @param {ShopSize & { kit: KitEntry, beginning: number, day: number }} size
 */
async function invent({ parts, inspections, seatings, places, kit, beginning, day }) {
  let seed = 1;
  const random = () => {
    seed = (Math.imul(seed, 1664525) + 1013904223) >>> 0;
    return seed / 2 ** 32;
  };
  const about = (/** @type {number} */ middle, /** @type {number} */ spread) =>
    (middle + (random() + random() + random() - 1.5) * spread).toFixed(1);
  const mm = (/** @type {string} */ text) => ({ text, unit: 'mm' });
  const micro = (/** @type {string} */ text) => ({ text, unit: 'µm' });
  const MATERIALS = ['Aluminium', 'Tool steel', 'Cast iron', 'Brass'];

  /** @type {IDBDatabase} */
  const database = await new Promise((resolve, reject) => {
    const request = indexedDB.open('highedge');
    // The app is in sight before it has a database.
    request.onupgradeneeded = () => request.result.createObjectStore('records');
    request.onsuccess = () => resolve(request.result);
    request.onerror = () => reject(request.error);
  });

  for (let index = 0; index < parts; index += 1) {
    const made = new Date(beginning + (index * 700 * day) / parts);
    const id = `part-${String(index).padStart(5, '0')}`;
    const entry = {
      name: `Block ${index + 1}`,
      job: `Job ${1 + (index % 400)}`,
      material: MATERIALS[index % MATERIALS.length],
      size: { x: mm('60'), y: mm('40'), z: mm('90') },
      datum: 'bottom',
      requirements: ['right', 'left', 'back', 'front'].map((face) => ({
        ...{ id: `${face} square`, face, datum: 'bottom', tolerance: mm('0.005') },
      })),
      finished: [],
    };
    const base = (/** @type {number} */ days) => {
      const at = new Date(made.getTime() + days * day).toISOString();
      return { format: 2, made: at, changed: at };
    };
    const transaction = database.transaction('records', 'readwrite');
    const store = transaction.objectStore('records');
    store.put({ ...base(0), kind: 'part', id, example: false, entry }, `part/${id}`);
    for (let turn = 0; turn < inspections; turn += 1) {
      // Each lapping halves what is left, more or less.
      const lean = 40 * 0.7 ** (turn + 4 * random());
      /** @param {'right' | 'back'} one @param {'left' | 'front'} other */
      const nose = (one, other) => ({
        kind: 'nose comparator',
        id: `nose ${one}`,
        faces: [one, other],
        base: 'bottom',
        noseHeight: mm('6'),
        indicatorHeight: mm('80'),
        placings: Array.from({ length: 2 * seatings }, (_, place) => {
          const face = place % 2 === 0 ? one : other;
          const side = place % 2 === 0 ? lean : -lean;
          return { id: `nose ${face} ${place}`, face, reading: micro(about(3 + side / 2, 1)) };
        }),
      });
      /** @param {'right' | 'back'} one @param {'left' | 'front'} other @param {number} width */
      const micrometer = (one, other, width) => ({
        kind: 'micrometer',
        id: `micrometer ${one}`,
        faces: [one, other],
        places: Array.from({ length: places }, (_, place) => ({
          id: `over ${one} ${place}`,
          up: mm(String(5 + (80 * place) / Math.max(1, places - 1))),
          across: mm(''),
          thickness: mm((width + 0.001 + (random() - 0.5) / 1000).toFixed(4)),
        })),
      });
      const inspection = {
        ...base(turn),
        ...{ kind: 'inspection', id: `inspection-${String(turn).padStart(2, '0')}`, part: id },
        setups: [
          ...[nose('right', 'left'), nose('back', 'front')],
          ...[micrometer('right', 'left', 60), micrometer('back', 'front', 40)],
        ],
        ...(turn < inspections - 1 && { closed: { at: base(turn).made, part: entry, kit } }),
      };
      store.put(inspection, `chain/${id}/inspection/${inspection.id}`);
      if (turn === inspections - 1) continue;
      const work = {
        ...base(turn + 0.5),
        ...{ kind: 'work', id: `work-${String(turn).padStart(2, '0')}`, part: id },
        ...{ after: inspection.id, face: 'right', method: 'lap', abrasive: 'P400 paper' },
        amount: { text: String(10 + (turn % 5)), unit: 'seconds' },
        note: '',
        advised: { mean: lean / 3, slopes: { z: lean / 140 } },
      };
      store.put(work, `chain/${id}/work/${work.id}`);
    }
    await new Promise((resolve, reject) => {
      transaction.oncomplete = resolve;
      transaction.onabort = () => reject(transaction.error);
    });
  }
  database.close();
}
