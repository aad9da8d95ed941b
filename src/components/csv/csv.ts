/** A number as a spreadsheet reads it. */
const number = /^[-+]?\d+([.,]\d+)?$/;

/**
 * A cell by RFC 4180: in quotation marks where it holds a separator, a mark or a new line. What a spreadsheet would take for a
 * formula gets an apostrophe in front (common practice), so that a pupil's text stays text.
 */
function field(text: string, separator: string): string {
  const plain = text.replace(/^−/, '-');
  if (number.test(plain)) return plain.includes(separator) ? `"${plain}"` : plain;
  const safe = /^[=+\-@\t\r]/.test(plain) ? `'${text}` : text;
  return /["\r\n,;]/.test(safe) ? `"${safe.replaceAll('"', '""')}"` : safe;
}

/** Rows of cells as a CSV text. With a decimal comma the separator is a semicolon, as spreadsheets of those countries expect. */
export function csvOf(rows: readonly (readonly string[])[], decimalSign: '.' | ','): string {
  const separator = decimalSign === ',' ? ';' : ',';
  return rows.map((cells) => `${cells.map((cell) => field(cell, separator)).join(separator)}\r\n`).join('');
}
