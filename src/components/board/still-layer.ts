import {
  dotsOf,
  labelParts,
  lineOf,
  subscript,
  terminalRadius,
  type Drawing,
  type PlacedMark,
  type PlacedSymbol,
  type QuantityArrow,
} from '../../engine/core.ts';
import { put, shape } from './shape.ts';
import type { Word } from './shown.ts';

/** The drawing that stands still: wires, symbols, labels; a group for each component that can be focused. */
export class StillLayer {
  readonly svg: SVGSVGElement = shape('svg', {
    class: 'still',
    part: 'drawing',
    role: 'graphics-document',
    'aria-describedby': 'words',
  });
  readonly #words = shape('desc', { id: 'words' });
  readonly #groups = new Map<string, SVGGElement>();
  #lit: readonly string[] = [];

  /** Takes the room of a drawing. */
  size({ width, height }: Pick<Drawing, 'width' | 'height'>): void {
    put(this.svg, 'viewBox', `0 0 ${width} ${height}`);
    put(this.svg, 'width', `${width}`);
    put(this.svg, 'height', `${height}`);
  }

  /** Draws anew; `live` are the ids whose values change and stand in another layer. */
  draw(drawing: Drawing, shown: ReadonlySet<Word>, live: ReadonlySet<string>): void {
    const { wires, symbols, labels, terminals, mark, arrows = [] } = drawing;
    const focused = this.#focused();
    this.#groups.clear();
    for (const symbol of symbols) this.#groups.set(symbol.id, component(symbol));
    const loose: Node[] = [];
    for (const { id, role, text, at, anchor } of labels) {
      if (role === 'reading' || (role === 'value' && live.has(id))) continue;
      if (role !== 'quantity' && !shown.has(role === 'value' ? 'values' : 'labels')) continue;
      const place = { class: role, [`data-${role}`]: id, x: at.x, y: at.y, 'text-anchor': anchor };
      const written = shape('text', place, ...(role === 'value' ? [text] : withSubscript(text)));
      if (role === 'point' || role === 'quantity') loose.push(written);
      else this.#groups.get(id)?.append(written);
    }
    this.svg.replaceChildren(
      this.#words,
      ...wires.map(({ node, lines, hops }) =>
        shape('path', {
          class: 'wire',
          'data-node': node,
          d: lines.map((line) => lineOf(line, hops)).join(''),
        }),
      ),
      shape('path', { class: 'dots', d: wires.map(({ dots }) => dotsOf(dots)).join('') }),
      ...terminals.map(({ x, y }) => shape('circle', { class: 'terminal', cx: x, cy: y, r: terminalRadius })),
      ...arrows.map(arrow),
      ...loose,
      ...(mark ? [zero(mark)] : []),
      ...this.#groups.values(),
    );
    this.light(this.#lit);
    if (focused !== undefined) this.group(focused)?.focus();
  }

  /** The group of a component. */
  group(id: string): SVGGElement | undefined {
    return this.#groups.get(id);
  }

  /** Names each component, and says which one the Tab key reaches. */
  name(nameOf: (id: string) => string, reached: string | undefined): void {
    for (const [id, group] of this.#groups) put(group, 'aria-label', nameOf(id));
    this.reach(reached ?? '');
  }

  /** Lets the Tab key reach one component. */
  reach(id: string): void {
    for (const [each, group] of this.#groups) put(group, 'tabindex', each === id ? '0' : '-1');
  }

  /** Names the whole, and tells it in words. */
  describe(name: string, words: string): void {
    put(this.svg, 'aria-label', name);
    if (this.#words.textContent !== words) this.#words.textContent = words;
  }

  /** Makes components stand out, drawn anew or not. */
  light(ids: readonly string[]): void {
    this.#lit = ids;
    for (const [id, group] of this.#groups) group.classList.toggle('lit', ids.includes(id));
  }

  #focused(): string | undefined {
    for (const [id, group] of this.#groups) if (group.matches(':focus')) return id;
    return undefined;
  }
}

/** A label with its subscript. */
function withSubscript(label: string): (Node | string)[] {
  const [letters, below] = labelParts(label);
  const { size, drop } = subscript;
  return [letters, ...(below ? [shape('tspan', { dy: drop, 'font-size': `${size}em` }, below)] : [])];
}

/** The arrow of a quantity that is written; what is said of it stands in the words of the whole. */
function arrow({ name, kind, at, path, filled }: QuantityArrow): SVGGElement {
  return shape(
    'g',
    { class: kind, 'data-arrow': name, 'aria-hidden': 'true', transform: `translate(${at.x} ${at.y})` },
    shape('path', { class: 'span', d: path }),
    shape('path', { class: 'filled', d: filled }),
  );
}

/** The 0 V mark; what is said of it stands in the words of the whole. */
function zero({ node, at, path, filled, text, baseline, anchor }: PlacedMark): SVGGElement {
  const move = { transform: `translate(${at.x} ${at.y})` };
  return shape(
    'g',
    { class: 'zero', 'data-zero': node, 'aria-hidden': 'true' },
    shape('path', { class: 'wire', d: path, ...move }),
    shape('path', { class: 'filled', d: filled, ...move }),
    shape('text', { class: 'value', x: baseline.x, y: baseline.y, 'text-anchor': anchor }, text),
  );
}

/** How far the frame of a focused component stands off its symbol. */
const off = 5;

function component({ id, at, path, filled, letter, condition, ends, hit, box }: PlacedSymbol): SVGGElement {
  const move = { transform: `translate(${at.x} ${at.y})` };
  return shape(
    'g',
    {
      class: 'component',
      'data-id': id,
      ...(condition && { 'data-condition': condition }),
      role: 'graphics-object',
      tabindex: -1,
    },
    shape('rect', { class: 'hit', ...hit }),
    shape('rect', {
      class: 'ring',
      x: box.x - off,
      y: box.y - off,
      width: box.width + 2 * off,
      height: box.height + 2 * off,
      rx: 4,
    }),
    ...(ends ? [shape('path', { class: 'wire', d: ends, ...move })] : []),
    shape('path', { class: 'symbol', d: path, ...move }),
    ...(filled ? [shape('path', { class: 'filled', d: filled, ...move })] : []),
    ...(letter
      ? [shape('text', { class: 'letter', x: at.x, y: at.y + 5, 'text-anchor': 'middle' }, letter)]
      : []),
  );
}
