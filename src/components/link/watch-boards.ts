import { boardTag } from './find-board.ts';

interface Watch {
  readonly observer: MutationObserver;
  readonly listeners: Set<() => void>;
}

const watches = new WeakMap<Node, Watch>();

const holdsBoard = (node: Node): boolean =>
  node instanceof Element && (node.localName === boardTag || node.querySelector(boardTag) !== null);

function concernsBoard({ type, target, addedNodes, removedNodes }: MutationRecord): boolean {
  return type === 'attributes' ? holdsBoard(target) : [...addedNodes, ...removedNodes].some(holdsBoard);
}

function begin(root: Node): Watch {
  const listeners = new Set<() => void>();
  const observer = new MutationObserver((records) => {
    if (records.some(concernsBoard)) for (const listener of [...listeners]) listener();
  });
  observer.observe(root, { childList: true, subtree: true, attributeFilter: ['id'] });
  const watch = { observer, listeners };
  watches.set(root, watch);
  return watch;
}

/** Calls `listener` whenever a board comes, goes or changes its id in a root; returns how to stop. One observer serves all of a root. */
export function watchBoards(root: Node, listener: () => void): () => void {
  const { observer, listeners } = watches.get(root) ?? begin(root);
  listeners.add(listener);
  return () => {
    listeners.delete(listener);
    if (listeners.size > 0 || watches.get(root)?.listeners !== listeners) return;
    observer.disconnect();
    watches.delete(root);
  };
}
