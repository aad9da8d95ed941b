const listeners = new WeakMap<Element, (near: boolean) => void>();
let observer: IntersectionObserver | undefined;

/** What lies this close to the window is as good as seen. */
export const margin = 200;

function tell(entries: readonly IntersectionObserverEntry[]): void {
  for (const { target, isIntersecting } of entries) listeners.get(target)?.(isIntersecting);
}

/** Tells when an element comes near the window and when it leaves; returns how to stop. One observer serves the page. */
export function watchSight(element: Element, listener: (near: boolean) => void): () => void {
  observer ??= new IntersectionObserver(tell, { rootMargin: `${margin}px` });
  listeners.set(element, listener);
  observer.observe(element);
  return () => {
    listeners.delete(element);
    observer?.unobserve(element);
  };
}
