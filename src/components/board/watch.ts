type Observer = Pick<ResizeObserver, 'observe' | 'unobserve'>;

/** Watches an element for a listener; returns how to stop. */
type Watch<Entry> = (element: Element, listener: (entry: Entry) => void) => () => void;

/** What watches with one observer for the whole page, made when it is first needed. */
function watcher<Entry extends { readonly target: Element }>(
  make: (tell: (entries: readonly Entry[]) => void) => Observer,
): Watch<Entry> {
  const listeners = new WeakMap<Element, (entry: Entry) => void>();
  let made: Observer | undefined;
  return (element, listener) => {
    const observer = (made ??= make((entries) => {
      for (const entry of entries) listeners.get(entry.target)?.(entry);
    }));
    listeners.set(element, listener);
    observer.observe(element);
    return () => {
      listeners.delete(element);
      observer.unobserve(element);
    };
  };
}

/** What lies this close to the window is as good as seen. */
export const margin = 200;

/** Tells when the size of an element changes. */
export const watchSize: Watch<ResizeObserverEntry> = watcher((tell) => new ResizeObserver(tell));

/** Tells when an element comes near the window and when it leaves. */
export const watchSight: Watch<IntersectionObserverEntry> = watcher(
  (tell) => new IntersectionObserver(tell, { rootMargin: `${margin}px` }),
);
