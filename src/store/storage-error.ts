/** Why the browser's database did not do what it was asked. */
export type Refusal =
  /** There is no room left. */
  | 'full'
  /** Another window holds an older version of the database open. */
  | 'blocked'
  /** The database was made by a newer version of the app. */
  | 'newer app'
  /** A record in this place was written by a newer version of the app. */
  | 'newer record'
  /** It does not answer. */
  | 'silent'
  /** It will not open, or what it was asked failed for another reason. */
  | 'refused';

/** What went wrong with the browser's database. */
export class StorageError extends Error {
  override readonly name = 'StorageError';

  constructor(
    readonly refusal: Refusal,
    message: string,
    options?: ErrorOptions,
  ) {
    super(message, options);
  }
}

/** What an error of the database means, by the names of the IndexedDB standard. */
export function refusalOf(error: unknown): Refusal {
  if (error instanceof StorageError) return error.refusal;
  const name = error instanceof DOMException ? error.name : undefined;
  if (name === 'QuotaExceededError') return 'full';
  return name === 'VersionError' ? 'newer app' : 'refused';
}
