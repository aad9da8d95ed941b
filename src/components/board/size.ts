const listeners = new WeakMap<Element, () => void>();
let observer: ResizeObserver | undefined;

function tell(entries: readonly ResizeObserverEntry[]): void {
  for (const { target } of entries) listeners.get(target)?.();
}

/** Tells when the size of an element changes; returns how to stop. One observer serves the page. */
export function watchSize(element: Element, listener: () => void): () => void {
  observer ??= new ResizeObserver(tell);
  listeners.set(element, listener);
  observer.observe(element);
  return () => {
    listeners.delete(element);
    observer?.unobserve(element);
  };
}
