/** Reads a CSV text by RFC 4180, character by character: rows of fields. */
export function readCSV(text: string, separator: string): string[][] {
  const rows: string[][] = [];
  let row: string[] = [];
  let field = '';
  let quoted = false;
  for (let at = 0; at < text.length; at += 1) {
    const each = text.charAt(at);
    if (quoted) {
      if (each !== '"') field += each;
      else if (text.charAt(at + 1) === '"') {
        field += each;
        at += 1;
      } else quoted = false;
    } else if (each === '"' && field === '') quoted = true;
    else if (each === separator) {
      row.push(field);
      field = '';
    } else if (each === '\r' && text.charAt(at + 1) === '\n') {
      rows.push([...row, field]);
      row = [];
      field = '';
      at += 1;
    } else field += each;
  }
  if (row.length > 0 || field) throw new Error('The last line has no end.');
  return rows;
}
