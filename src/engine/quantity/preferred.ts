/** The two-figure preferred values of a decade (IEC 60063). */
const series = {
  E12: [10, 12, 15, 18, 22, 27, 33, 39, 47, 56, 68, 82],
  E24: [10, 11, 12, 13, 15, 16, 18, 20, 22, 24, 27, 30, 33, 36, 39, 43, 47, 51, 56, 62, 68, 75, 82, 91],
} as const;

/** A series of preferred values. */
export type Series = keyof typeof series;

/** The preferred value at a place in the series that runs on through all decades, as two figures and a power of ten. */
export function preferred(name: Series, place: number): { readonly digits: number; readonly power: number } {
  const decade = series[name];
  const power = Math.floor(place / decade.length);
  return { digits: decade[place - power * decade.length] ?? 10, power: power - 1 };
}

/** The place in the series of the largest preferred value that is not more than `value` (which is above 0). */
export function preferredPlace(name: Series, value: number): number {
  const decade = series[name];
  const power = Math.floor(Math.log10(value) + 1e-9);
  const digits = value / 10 ** (power - 1) + 1e-6;
  return power * decade.length + decade.filter((preferredValue) => preferredValue <= digits).length - 1;
}
