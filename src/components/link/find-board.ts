/** The tag of a board. */
export const boardTag = 'rheolet-board';

/** What looking for a board gave: the board, or the ids of those there are. */
export interface Found {
  readonly board?: HTMLElement;
  readonly present: readonly string[];
}

/** The roots an element stands in: its own, that of its host, and so on to the page. */
export function rootsOf(element: Element): readonly (Document | ShadowRoot)[] {
  const root = element.getRootNode();
  if (root instanceof ShadowRoot) return [root, ...rootsOf(root.host)];
  return root instanceof Document ? [root] : [];
}

function enclosing(element: Element): HTMLElement | undefined {
  const root = element.getRootNode();
  return (
    element.closest<HTMLElement>(boardTag) ?? (root instanceof ShadowRoot ? enclosing(root.host) : undefined)
  );
}

function isElement(found: HTMLElement | '' | null): found is HTMLElement {
  return Boolean(found);
}

/**
 * The board of an element: the one it names (in its own root, then outwards), else the one it stands in, else the only
 * one of the nearest root that has any.
 */
export function findBoard(element: Element, name: string): Found {
  const roots = rootsOf(element);
  const named = roots.map(
    (root) => name && root.querySelector<HTMLElement>(`${boardTag}#${CSS.escape(name)}`),
  );
  const board = named.find(isElement) ?? enclosing(element);
  if (board) return { board, present: [] };
  const lists = roots.map((root) => [...root.querySelectorAll<HTMLElement>(boardTag)]);
  const boards = lists.find((list) => list.length > 0) ?? [];
  const [only] = boards;
  if (only && boards.length === 1) return { board: only, present: [] };
  return { present: boards.map(({ id }) => id).filter(Boolean) };
}
