/** True where the browser hands a file of this name and type on to other apps. */
export function canShare(name: string, type: string): boolean {
  return 'canShare' in navigator && navigator.canShare({ files: [new File([''], name, { type })] });
}

/** Hands the file to another app where the browser can and the person wants to; otherwise saves it. */
export async function shareFile(file: File): Promise<void> {
  if ('canShare' in navigator && navigator.canShare({ files: [file] })) {
    try {
      await navigator.share({ files: [file], title: file.name });
      return;
    } catch (error) {
      // The person thought better of it.
      if (error instanceof DOMException && error.name === 'AbortError') return;
    }
  }
  saveFile(file);
}

/** Saves the file where the browser keeps what it is given. */
export function saveFile(file: File): void {
  const address = URL.createObjectURL(file);
  const link = document.createElement('a');
  link.href = address;
  link.download = file.name;
  link.click();
  // The browser may still be reading it.
  setTimeout(() => URL.revokeObjectURL(address), 60_000);
}
