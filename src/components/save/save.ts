/** A frame that may only run scripts saves no files, and does not say so. A page opened from a file has no origin either, but may. */
const mayNotSave = (): boolean => origin === 'null' && location.protocol !== 'file:';

/** Saves a file of this name; false where the page may not. */
export function save(content: Blob, name: string): boolean {
  if (mayNotSave()) return false;
  const link = document.createElement('a');
  link.href = URL.createObjectURL(content);
  link.download = name;
  link.click();
  setTimeout(() => URL.revokeObjectURL(link.href), 1000);
  return true;
}
