/** A file that cannot be taken, with what is wrong with it in plain words. */
export class FileRefused extends Error {
  override readonly name = 'FileRefused';
}
