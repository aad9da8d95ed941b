import { save as saveFile } from '../save/index.ts';

/** Saves a text as a CSV file; false where the page may not. The mark in front tells spreadsheets that it is UTF-8 (common practice). */
export function save(text: string, name: string): boolean {
  return saveFile(new Blob(['\ufeff', text], { type: 'text/csv' }), `${name}.csv`);
}
