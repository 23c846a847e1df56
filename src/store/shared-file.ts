/*
 * What another app shares with this one arrives at the service worker, before there is a page. It is
 * laid into a cache of its own, where the page takes it up as soon as it is open.
 */

/** Where the system sends what is shared, within the folder of the app, and in which fields of a form. */
export const SHARE = { path: 'share', files: 'files', title: 'title', text: 'text' } as const;

const CACHE = 'highedge shared';

/** Lays what was shared down, in place of what nobody has taken up: its files, else its text as a file. */
export async function layDownShared(form: FormData): Promise<void> {
  await caches.delete(CACHE);
  const cache = await caches.open(CACHE);
  const files = filesOf(form);
  await Promise.all(files.map((file, index) => cache.put(`/${index}`, answerOf(file))));
}

function filesOf(form: FormData): readonly File[] {
  const files = form.getAll(SHARE.files).filter((entry) => entry instanceof File);
  const text = form.get(SHARE.text);
  if (files.length > 0 || typeof text !== 'string' || text === '') return files;
  const title = form.get(SHARE.title);
  const name = typeof title === 'string' && title !== '' ? title : 'Shared text';
  return [new File([text], name, { type: 'text/csv' })];
}

/** The name goes along as a header, which holds no more than plain letters. */
function answerOf(file: File): Response {
  return new Response(file, { headers: { name: encodeURIComponent(file.name) } });
}

/** Takes up what was shared; none where nothing was. It then lies there no more. */
export async function takeUpShared(): Promise<readonly File[]> {
  if (typeof caches === 'undefined' || !(await caches.has(CACHE))) return [];
  const cache = await caches.open(CACHE);
  const answers = await cache.matchAll();
  const files = await Promise.all(answers.map(fileOf));
  await caches.delete(CACHE);
  return files;
}

async function fileOf(answer: Response): Promise<File> {
  const name = decodeURIComponent(answer.headers.get('name') ?? '');
  const type = answer.headers.get('Content-Type') ?? '';
  return new File([await answer.blob()], name, { type });
}
