/** The size of labels and of the letters in meters, in pixels. */
export const textSize = 14;

const narrow = /[ \u202f.,/fijlIJ]/;
const wide = /[mwMW%±]/;
const capital = /[A-ZΩ]/;

/** How much wider a label is for being bold. */
export const bold = 1.12;

/** Pixels that a line of text may take, in the widest of the usual fonts: no page is at hand to measure it. */
export function textWidth(text: string): number {
  const ems = Array.from(text, (letter) =>
    narrow.test(letter) ? 0.42 : wide.test(letter) ? 1 : capital.test(letter) ? 0.79 : 0.64,
  );
  return Math.ceil(textSize * ems.reduce((sum, width) => sum + width, 0));
}
