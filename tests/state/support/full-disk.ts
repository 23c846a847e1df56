import { vi } from 'vitest';

/**
 * Lets the next write of a record with `id` fail as on a full disk: its transaction is aborted. All
 * the others work.
 */
export function failOnceAt(id: string): void {
  const put = IDBObjectStore.prototype.put;
  let failed = false;
  vi.spyOn(IDBObjectStore.prototype, 'put').mockImplementation(function (
    this: IDBObjectStore,
    ...values
  ) {
    const request = put.apply(this, values);
    if (!failed && String(values[1]).endsWith(`/${id}`)) {
      failed = true;
      this.transaction.abort();
    }
    return request;
  });
}
