/** A frame that may only run scripts saves no files, and does not say so. A page opened from a file has no origin either, but may. */
const mayNotSave = (): boolean => origin === 'null' && location.protocol !== 'file:';

/** Saves a text as a CSV file; false where the page may not. The mark in front tells spreadsheets that it is UTF-8 (common practice). */
export function save(text: string, name: string): boolean {
  if (mayNotSave()) return false;
  const link = document.createElement('a');
  link.href = URL.createObjectURL(new Blob(['\ufeff', text], { type: 'text/csv' }));
  link.download = `${name}.csv`;
  link.click();
  setTimeout(() => URL.revokeObjectURL(link.href), 1000);
  return true;
}
