/** What a class uses: how potential difference is called and lettered, how many figures are written, and which decimal sign. */
export interface Course {
  readonly wording: 'p.d.' | 'voltage';
  readonly letter: 'V' | 'U';
  /** Significant figures, or the fewest of the values given (at least two). */
  readonly figures: number | 'as given';
  readonly decimalSign: '.' | ',';
}

/** Potential difference, V, three figures, decimal point. */
export const usualCourse: Course = { wording: 'p.d.', letter: 'V', figures: 3, decimalSign: '.' };

const choices: Readonly<Record<string, Partial<Course>>> = {
  'p.d.': { wording: 'p.d.' },
  voltage: { wording: 'voltage' },
  v: { letter: 'V' },
  u: { letter: 'U' },
  'as-given': { figures: 'as given' },
  point: { decimalSign: '.' },
  comma: { decimalSign: ',' },
};

/** The words that a course may have. */
export const courseWords: readonly string[] = [...Object.keys(choices), '2', '3', '4', '5', '6'];

/**
 * Reads a course from words in any order: `p.d.` or `voltage`, `V` or `U`, `2` to `6` figures or `as-given`, `point` or `comma`.
 * What is not said is as usual; words that say nothing are given back.
 */
export function readCourse(text: string): { readonly course: Course; readonly unknown: readonly string[] } {
  let course = usualCourse;
  const unknown: string[] = [];
  for (const word of text.split(/\s+/).filter(Boolean).slice(0, 20)) {
    const key = word.toLowerCase();
    const choice = /^[2-6]$/.test(key)
      ? { figures: Number(key) }
      : Object.hasOwn(choices, key)
        ? choices[key]
        : undefined;
    if (choice) course = { ...course, ...choice };
    else unknown.push(word.slice(0, 40));
  }
  return { course, unknown };
}
