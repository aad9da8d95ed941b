/** Random choices that a seed repeats (a 32-bit multiply and xor generator; its quality is enough for tests). */
export class Random {
  #state: number;

  constructor(seed: number) {
    this.#state = seed | 0;
  }

  /** A whole number from 0 to `count` − 1. */
  below(count: number): number {
    this.#state = (this.#state + 0x6d2b79f5) | 0;
    let mixed = Math.imul(this.#state ^ (this.#state >>> 15), this.#state | 1);
    mixed ^= mixed + Math.imul(mixed ^ (mixed >>> 7), mixed | 61);
    return ((mixed ^ (mixed >>> 14)) >>> 0) % count;
  }

  /** Whether something happens that happens once in `times`. */
  once(times: number): boolean {
    return this.below(times) === 0;
  }

  /** One of a list, which is not empty. */
  pick<T>(list: readonly T[]): T {
    return list[this.below(list.length)]!;
  }
}
