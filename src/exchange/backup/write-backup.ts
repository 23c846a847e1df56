import { type BackupHead, endLine, headLine } from './format';

/** A backup file of `records`, which are taken one group after the other. */
export function writeBackup(
  head: BackupHead,
  records: AsyncIterable<readonly unknown[]>,
): Promise<Blob> {
  const text = textOf(head, records);
  const stream = new ReadableStream<Uint8Array<ArrayBuffer>>({
    async pull(controller) {
      const { done, value } = await text.next();
      if (done) controller.close();
      else controller.enqueue(new TextEncoder().encode(value));
    },
  });
  const zipped = stream.pipeThrough(new CompressionStream('gzip'));
  return new Response(zipped, { headers: { 'Content-Type': 'application/gzip' } }).blob();
}

async function* textOf(head: BackupHead, records: AsyncIterable<readonly unknown[]>) {
  yield headLine(head);
  let count = 0;
  for await (const group of records) {
    const lines = group.map((record, index) => {
      return `${count + index === 0 ? '' : ',\n'}${JSON.stringify(record) ?? 'null'}`;
    });
    count += group.length;
    yield lines.join('');
  }
  yield `${count === 0 ? '' : '\n'}${endLine(count)}`;
}
