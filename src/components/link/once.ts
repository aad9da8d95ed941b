import type { Circuit } from '../../engine/core.ts';

/** Works out what follows from a circuit once, for all elements that show it. */
export function once<T>(work: (circuit: Circuit) => T): (circuit: Circuit) => T {
  const known = new WeakMap<Circuit, { readonly made: T }>();
  return (circuit) => {
    const before = known.get(circuit);
    if (before) return before.made;
    const made = work(circuit);
    known.set(circuit, { made });
    return made;
  };
}
