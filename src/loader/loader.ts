import { importFile, names } from './shipped.ts';

const boardTag = 'rheolet-board';
/** What HTML filters leave of a board: text set apart. */
const asText = 'pre.rheolet-board,pre>code.language-rheolet';
const wanted = [...names.map((name) => `rheolet-${name}:not(:defined)`), asText].join();

/** The names of all that the page uses, near or far. */
const used = new Set<string>();
const fetched = new Set<string>();
let failed = false;

/** The name in a tag; what is text is a board. */
const nameOf = ({ localName }: Element): string => localName.split('-')[1] ?? 'board';

function load(name: string): void {
  if (fetched.has(name)) return;
  fetched.add(name);
  importFile(name).catch((error: unknown) => {
    if (!failed) console.warn(`Rheolet: ${name}.js did not load.`, error);
    failed = true;
  });
}

/** Whatever is near reads a board, which may be far away or come later. */
function loadNear(entries: readonly IntersectionObserverEntry[], sight: IntersectionObserver): void {
  for (const { target, isIntersecting } of entries)
    if (isIntersecting) {
      sight.unobserve(target);
      load(nameOf(target));
      load('board');
    }
}

/** A board takes the place of its text, and its name. */
function revive(text: Element): void {
  const pre = text.closest('pre');
  if (!pre) return;
  const board = document.createElement(boardTag);
  board.id = pre.id;
  board.append(...pre.childNodes);
  pre.replaceWith(board);
}

/** The page may be printed from its beginning to its end. */
const loadAll = (): void => used.forEach(load);

/**
 * Fetches the elements of a root, each kind once the first of it comes near the window, whatever comes and goes; boards
 * written as `<pre class="rheolet-board">` or `<pre><code class="language-rheolet">` are brought to life. The page itself
 * is watched already; a shadow root is to be told of here. Where there is no root (a closed one) nothing is done.
 */
export function watch(root: Document | ShadowRoot | null | undefined): void {
  if (!root) return;
  const sight = new IntersectionObserver(loadNear, { rootMargin: '200px' });
  const find = (place: Node): void => {
    for (const element of (place as ParentNode).querySelectorAll<HTMLElement>(wanted)) {
      if (!customElements.get(boardTag) || !element.matches(asText)) {
        used.add(nameOf(element));
        sight.observe(element);
      } else if (!element.isContentEditable) revive(element);
    }
  };
  const changes = new MutationObserver((records) => records.forEach(({ target }) => find(target)));
  changes.observe(root, { childList: true, subtree: true });
  void customElements.whenDefined(boardTag).then(() => find(root));
  addEventListener('beforeprint', loadAll);
  find(root);
}
