/** The order in which parts are revealed, where the page gives none. */
export const usualOrder = 'ribbons value meter levels graph table rules claim steps';

/** Something that can be covered, keeping its room, and revealed. */
export interface Part {
  readonly element: HTMLElement;
  cover(): void;
  reveal(): void;
}

/** An element, out of sight, out of hearing and out of reach while it is covered. */
const whole = (element: HTMLElement): Part => ({
  element,
  cover: () => element.style.setProperty('visibility', 'hidden'),
  reveal: () => element.style.removeProperty('visibility'),
});

/** The ribbons of a board: its own words do it, and come back as they were. */
function ribbonsOf(board: HTMLElement & { hide: string }): Part {
  const { hide } = board;
  return {
    element: board,
    cover: () => (board.hide = `${hide} ribbons arrows`),
    reveal: () => (board.hide = hide),
  };
}

const hasWords = (element: HTMLElement): element is HTMLElement & { hide: string } => 'hide' in element;

/** The parts of an activity in the order of these words: `ribbons`, the last part of a tag (`meter`), or an id. */
export function partsOf(activity: HTMLElement, order: string): readonly Part[] {
  const inside = [...activity.querySelectorAll<HTMLElement>('*')];
  const words = new Set((order.trim() || usualOrder).toLowerCase().split(/[\s,]+/));
  const taken = new Set<HTMLElement>();
  return [...words].flatMap((word) => {
    if (word === 'ribbons')
      return inside
        .filter(({ localName }) => localName === 'rheolet-board')
        .filter(hasWords)
        .map(ribbonsOf);
    const named = inside.filter(
      (each) => !taken.has(each) && (each.id.toLowerCase() === word || each.localName === `rheolet-${word}`),
    );
    for (const each of named) taken.add(each);
    return named.map(whole);
  });
}
