import { FileRefused } from '../file-refused';

/*
 * A file is unpacked piece by piece, and no further than a backup can be long: a small file may
 * unpack to more than the device can hold.
 */

export interface UnpackLimits {
  /** Characters that a line may have. */
  readonly line: number;
  /** Bytes that the whole file may have once unpacked. */
  readonly bytes: number;
  /** Bytes that each packed one may come to, once all are more than `unasked`. */
  readonly ratio: number;
  readonly unasked: number;
}

/** Records pack to a tenth or a fiftieth; what packs much better repeats itself without end. */
const USUAL: UnpackLimits = {
  ...{ line: 4_000_000, bytes: 4_000_000_000, ratio: 100, unasked: 50_000_000 },
};

/**
 * The lines of a text file, packed with gzip or not.
 *
 * @throws FileRefused where it is damaged, no text, or beyond the limits.
 */
export async function* linesOf(
  file: Blob,
  chosen: Partial<UnpackLimits> = {},
): AsyncGenerator<string> {
  const limits = { ...USUAL, ...chosen };
  const most = Math.min(limits.bytes, Math.max(limits.unasked, limits.ratio * file.size));
  const pieces = (await unpacked(file)).getReader();
  // Strict: what is no UTF-8 is no text of ours.
  const decoder = new TextDecoder('utf-8', { fatal: true });
  let rest = '';
  let bytes = 0;
  try {
    for (;;) {
      const { done, value } = await read(pieces);
      bytes += value?.length ?? 0;
      if (bytes > most) throw new FileRefused('It unpacks to more than any backup holds');
      const [first = '', ...others] = decoded(decoder, value).split('\n');
      rest += first;
      if (rest.length > limits.line)
        throw new FileRefused('A line in it is longer than any record');
      for (const next of others) {
        yield rest;
        rest = next;
      }
      if (done) break;
    }
    if (rest !== '') yield rest;
  } finally {
    await pieces.cancel().catch(() => {});
  }
}

async function unpacked(file: Blob): Promise<ReadableStream<Uint8Array>> {
  const [first, second] = new Uint8Array(await file.slice(0, 2).arrayBuffer());
  const isPacked = first === 0x1f && second === 0x8b;
  return isPacked ? file.stream().pipeThrough(new DecompressionStream('gzip')) : file.stream();
}

async function read(pieces: ReadableStreamDefaultReader<Uint8Array>) {
  try {
    return await pieces.read();
  } catch (error) {
    throw new FileRefused('It is damaged or cut short: it cannot be unpacked', { cause: error });
  }
}

function decoded(decoder: TextDecoder, bytes: Uint8Array | undefined): string {
  try {
    return decoder.decode(bytes, { stream: bytes !== undefined });
  } catch (error) {
    throw new FileRefused('It is no text file', { cause: error });
  }
}
