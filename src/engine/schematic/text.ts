/** The size of labels and of the letters in meters, in pixels. */
export const textSize = 14;

const narrow = /[ \u202f.,:;'|iljtfrI()[\]]/;
const wide = /[mwMWΩ@%±]/;
const capital = /[A-Z]/;

/** Pixels that a line of text may take, generously: no page is at hand to measure it. */
export function textWidth(text: string): number {
  let width = 0;
  for (const letter of text) {
    width += narrow.test(letter) ? 0.38 : wide.test(letter) ? 0.92 : capital.test(letter) ? 0.74 : 0.62;
  }
  return Math.ceil(width * textSize);
}
