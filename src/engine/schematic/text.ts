/** The size of labels and of the letters in meters, in pixels. */
export const textSize = 14;

const narrow = /[ \u202f.,/fijlIJ]/;
const wide = /[mwMW%±=]/;
const capital = /[A-ZΩ]/;

/** How much wider a label is for being bold. */
const bold = 1.12;

/** How large a subscript is beside the letters before it, and how many pixels below their line it stands. */
export const subscript = { size: 0.75, drop: 3 };

/** A label or a quantity's name as textbooks print it: its capitals, and what stands below the line after them; `R12` is R with the subscript 12. */
export function labelParts(label: string): readonly [letters: string, subscript: string] {
  const [all = '', letters = ''] = /^([A-Z]*)_?/.exec(label) ?? [];
  return [letters, label.slice(all.length)];
}

/** Pixels that a label may take, bold and with its subscript. */
export function labelWidth(label: string): number {
  const [letters, below] = labelParts(label);
  return Math.ceil(bold * (textWidth(letters) + subscript.size * textWidth(below)));
}

const ems = (letter: string): number =>
  narrow.test(letter) ? 0.42 : wide.test(letter) ? 1 : capital.test(letter) ? 0.79 : 0.64;

/** Pixels that a line of text may take, in the widest of the usual fonts: no page is at hand to measure it. */
export function textWidth(text: string): number {
  let width = 0;
  for (const letter of text) width += ems(letter);
  return Math.ceil(textSize * width);
}
