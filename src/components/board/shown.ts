/** What a board can show or hide. */
export const words = [
  'values',
  'readings',
  'ribbons',
  'arrows',
  'meters',
  'labels',
  'sliders',
  'conditions',
  'menu',
  'rules',
] as const;

/** A word of `show` and `hide`. */
export type Word = (typeof words)[number];

/** What a covered board keeps back: whatever gives a reading away. */
export const coverable: readonly Word[] = ['readings', 'ribbons', 'arrows', 'meters'];

/** The words of a list, with spaces or commas between. */
export const wordsIn = (list: string): string[] =>
  list
    .toLowerCase()
    .split(/[\s,]+/)
    .filter(Boolean);

/** What a board shows: everything but `rules`, with what its page shows and without what it hides; hidden readings take along the ribbons that tell them, unless these are asked for. */
export function shown(show: string, hide: string): ReadonlySet<Word> {
  const [wanted = [], unwanted = []] = [show, hide].map(wordsIn);
  if (unwanted.includes('readings'))
    unwanted.push(...['ribbons', 'arrows'].filter((word) => !wanted.includes(word)));
  return new Set(
    words.filter((word) => (word !== 'rules' || wanted.includes(word)) && !unwanted.includes(word)),
  );
}
