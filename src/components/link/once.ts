/** Works out what follows from a circuit, or from its solution, once, for all elements that show it. */
export function once<From extends object, T>(work: (from: From) => T): (from: From) => T {
  const known = new WeakMap<From, { readonly made: T }>();
  return (from) => {
    const before = known.get(from);
    if (before) return before.made;
    const made = work(from);
    known.set(from, { made });
    return made;
  };
}
