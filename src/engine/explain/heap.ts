/** What waits for its turn: the least comes first, and of equals the one that came first. */
export class Heap<T> {
  readonly #items: { readonly cost: number; readonly turn: number; readonly item: T }[] = [];
  #turns = 0;

  #isBefore(a: number, b: number): boolean {
    const [first, second] = [this.#items[a], this.#items[b]];
    if (!first || !second) return first !== undefined;
    return first.cost < second.cost || (first.cost === second.cost && first.turn < second.turn);
  }

  #swap(a: number, b: number): void {
    const [first, second] = [this.#items[a], this.#items[b]];
    if (first && second) [this.#items[a], this.#items[b]] = [second, first];
  }

  /** Lets an item wait. */
  push(item: T, cost: number): void {
    let place = this.#items.push({ cost, turn: this.#turns++, item }) - 1;
    for (let above = (place - 1) >> 1; place > 0 && this.#isBefore(place, above); above = (place - 1) >> 1) {
      this.#swap(place, above);
      place = above;
    }
  }

  /** The next item, which no longer waits; none where none does. */
  pop(): T | undefined {
    this.#swap(0, this.#items.length - 1);
    const next = this.#items.pop();
    let place = 0;
    for (;;) {
      const [left, right] = [2 * place + 1, 2 * place + 2];
      const below = this.#isBefore(right, left) ? right : left;
      if (!this.#isBefore(below, place)) return next?.item;
      this.#swap(place, below);
      place = below;
    }
  }
}
