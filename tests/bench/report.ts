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

/** How many times faster ours is than another's, by the middle samples, beside what is asked. */
export function against(label: string, ours: Timing, other: Timing, target: number): void {
  const ratio = other.median / ours.median;
  const verdict = ratio >= target ? 'reached' : 'missed';
  console.log(
    `  ${label.padEnd(34)} ${ratio.toPrecision(3).padStart(9)}×  (target ${target.toPrecision(3)}×: ${verdict})`,
  );
}

/** A time beside the most that is asked. */
export function atMost(label: string, { median }: Timing, limit: number): void {
  const verdict = median <= limit ? 'reached' : 'missed';
  console.log(`  ${label.padEnd(34)} ${micro(median).padStart(10)}  (target ${limit} µs: ${verdict})`);
}
