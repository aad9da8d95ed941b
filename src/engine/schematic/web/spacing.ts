import { even } from '../block.ts';

/** That one place is at least so far after another. */
export type Distance = readonly [from: number, to: number, least: number];

/** The places from 0 on, each as early as the distances allow; undefined where they contradict each other. */
function earliest(count: number, distances: readonly Distance[]): number[] | undefined {
  const places = new Array<number>(count).fill(0);
  const waitingFor = new Array<number>(count).fill(0);
  const after = Array.from({ length: count }, (): Distance[] => []);
  for (const distance of distances) {
    const [from, to] = distance;
    waitingFor[to] = (waitingFor[to] ?? 0) + 1;
    after[from]?.push(distance);
  }
  const ready = places.map((_, place) => place).filter((place) => waitingFor[place] === 0);
  for (const place of ready) {
    for (const [, to, least] of after[place] ?? []) {
      places[to] = Math.max(places[to] ?? 0, (places[place] ?? 0) + even(least));
      waitingFor[to] = (waitingFor[to] ?? 0) - 1;
      if (waitingFor[to] === 0) ready.push(to);
    }
  }
  return ready.length === count ? places : undefined;
}

/** Places that keep all distances, each in the middle of its room, on a grid of 2 pixels; undefined where that cannot be. */
export function spaced(count: number, distances: readonly Distance[]): number[] | undefined {
  const first = earliest(count, distances);
  const last = earliest(
    count,
    distances.map(([from, to, least]) => [to, from, least]),
  );
  if (!first || !last) return undefined;
  const length = Math.max(0, ...first);
  return first.map((place, i) => 2 * Math.floor((place + length - (last[i] ?? 0)) / 4));
}
