import type { Timing } from './measure.ts';

/** A heading. */
export function title(text: string): void {
  console.log(`\n${text}`);
}

const micro = (value: number): string => `${value < 100 ? value.toPrecision(3) : value.toFixed(0)} µs`;

/** What a task took: the middle of its samples and the least. */
export function took(label: string, { median, least }: Timing): void {
  console.log(`  ${label.padEnd(34)} ${micro(median).padStart(10)}  (least ${micro(least)})`);
}

/** Whether a value reaches what is asked, or by how much it does not. */
const verdict = (share: number): string =>
  share >= 1 ? 'met' : `not met, by a factor of ${(1 / share).toFixed(2)}`;

/** How many times faster ours is than another's, by the middle samples and by the least, beside what is asked; the least counts, since other work only adds to it. */
export function against(label: string, ours: Timing, other: Timing, target: number): void {
  const ratios = [other.median / ours.median, other.least / ours.least];
  const [median = NaN, least = NaN] = ratios.map((ratio) => Number(ratio.toPrecision(3)));
  const found = verdict(least / target);
  console.log(
    `  ${label.padEnd(34)} ${String(median).padStart(9)}×  (least ${least}×; target ${target.toPrecision(3)}×: ${found})`,
  );
}

/** A time beside the most that is asked, by the least sample. */
export function atMost(label: string, { median, least }: Timing, limit: number): void {
  console.log(
    `  ${label.padEnd(34)} ${micro(median).padStart(10)}  (least ${micro(least)}; target ${limit} µs: ${verdict(limit / least)})`,
  );
}

/** A plain value beside the most that is asked. */
export function noMore(label: string, value: number, limit: number): void {
  console.log(
    `  ${label.padEnd(34)} ${value.toPrecision(3).padStart(10)}  (target ${limit}: ${verdict(limit / value)})`,
  );
}
