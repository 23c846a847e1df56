/** A file for the user, made on this device. */
export interface OwnFile {
  readonly name: string;
  readonly text: string;
}

/** Hands the file to the browser, which saves it where the user wants it. */
export function saveAsFile({ name, text }: OwnFile): void {
  const link = document.createElement('a');
  link.href = URL.createObjectURL(new Blob([text], { type: 'application/json' }));
  link.download = name;
  link.click();
  // The browser has begun to read it; the address would keep it in memory.
  setTimeout(() => URL.revokeObjectURL(link.href), 60_000);
}
