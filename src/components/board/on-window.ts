type Happening = 'beforeprint' | 'DOMContentLoaded' | 'hashchange';

const listeners = new Map<string, Set<() => void>>();

function tell({ type }: Event): void {
  for (const listener of [...(listeners.get(type) ?? [])]) listener();
}

/** Calls the listener whenever something happens to the window; returns how to stop. One listener of the window serves all boards. */
export function onWindow(happening: Happening, listener: () => void): () => void {
  const all = listeners.get(happening) ?? new Set();
  listeners.set(happening, all);
  if (all.size === 0) addEventListener(happening, tell);
  all.add(listener);
  return () => {
    all.delete(listener);
    if (all.size === 0) removeEventListener(happening, tell);
  };
}
