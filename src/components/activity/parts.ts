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

type Board = HTMLElement & { hide: string };

/** What a board hides by words of its own, in the place of a whole element. */
const boardWords = new Map([
  ['ribbons', ['ribbons', 'arrows']],
  ['readings', ['readings']],
]);

/** A part of a board's drawing: words that the page had not given are added, and taken away again. */
function drawn(board: Board, words: readonly string[]): Part {
  const hidden = (): readonly string[] => board.hide.split(/\s+/).filter(Boolean);
  const added = words.filter((word) => !hidden().includes(word));
  return {
    element: board,
    cover: () => (board.hide = [...new Set([...hidden(), ...added])].join(' ')),
    reveal: () =>
      (board.hide = hidden()
        .filter((word) => !added.includes(word))
        .join(' ')),
  };
}

const hasWords = (element: HTMLElement): element is Board => 'hide' in element;

/** The parts of an activity in the order of these words: `ribbons` or `readings` of its boards, the last part of a tag (`meter`), or an id. */
export function partsOf(activity: HTMLElement, order: string): readonly Part[] {
  const inside = [...activity.querySelectorAll<HTMLElement>('*')];
  const words = new Set((order.trim() || usualOrder).toLowerCase().split(/[\s,]+/));
  const taken = new Set<HTMLElement>();
  return [...words].flatMap((word) => {
    const own = boardWords.get(word);
    if (own)
      return inside
        .filter(({ localName }) => localName === 'rheolet-board')
        .filter(hasWords)
        .map((board) => drawn(board, own));
    const named = inside.filter(
      (each) => !taken.has(each) && (each.id.toLowerCase() === word || each.localName === `rheolet-${word}`),
    );
    for (const each of named) taken.add(each);
    return named.map(whole);
  });
}
