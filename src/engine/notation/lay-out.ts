import {
  isPoint,
  isSupply,
  matched,
  nearest,
  wrongTwins,
  type Circuit,
  type Component,
} from '../circuit/index.ts';
import type { Cursor } from './cursor.ts';
import type { Line, Placed } from './line.ts';
import type { Item, Part } from './series.ts';
import type { Token } from './token.ts';

/** A point of the circuit, '' as long as it has no name. */
interface Point {
  name: string;
}

/** Two points in the direction of the line, or of a component. */
type Span = readonly [Point, Point];

/** Whether it is a supply. */
const drives = (component: Component | undefined): boolean => component !== undefined && isSupply(component);

/** The points of `from` and `to`: a supply drives along the line, so its positive terminal is at its right. */
function poles({ component, reversed }: Item, [left, right]: Span): Span {
  return drives(component) === reversed ? [left, right] : [right, left];
}

function holdsSupply(part: Part): boolean {
  if ('parts' in part) return part.parts.some(holdsSupply);
  return part.type === 'component' && drives(part.component);
}

/** The junctions that are named once in the whole line, but for labelled points in its chain: a drawing shows them. */
function namedOnce({ tokens }: Cursor, inChain: ReadonlySet<string>): readonly Token[] {
  const named = tokens.filter(({ type, text }) => type === '@' && text);
  const uses = new Map<string, number>();
  for (const { text } of named) uses.set(text, (uses.get(text) ?? 0) + 1);
  return named.filter(({ text }) => uses.get(text) === 1 && !(isPoint(text) && inChain.has(text)));
}

/** Joins the components of a line and names the points: junctions as written, the others 1, 2, … along the line. */
export function layOut(cursor: Cursor, { chain, placed, ends, zero, surroundings }: Line): Circuit {
  const spans = new Map<Item, Span>();
  const junctions = new Map<string, Point>();
  const at = ({ text }: Token): Point => {
    const point = junctions.get(text) ?? { name: text };
    junctions.set(text, point);
    return point;
  };

  const name = (point: Point, token: Token): void => {
    const { text } = token;
    if (junctions.has(text)) cursor.flag(token, 'junction twice', text);
    else if (point.name) cursor.flag(token, 'same point', text, '', point.name);
    else if (text) {
      point.name = text;
      junctions.set(text, point);
    }
  };

  const lay = (part: Part, left: Point, right: Point): void => {
    if (part.type === 'component') spans.set(part, [left, right]);
    else if (part.type === 'junction') cursor.flag(part.token, 'junction alone', part.token.text);
    else if (part.type === 'parallel') for (const branch of part.parts) lay(branch, left, right);
    else {
      const last = part.parts.findLast(({ type }) => type !== 'junction');
      let point = left;
      for (const each of part.parts) {
        if (last && each.type === 'junction') name(point, each.token);
        else {
          const next = each === last ? right : { name: '' };
          lay(each, point, next);
          point = next;
        }
      }
    }
  };

  /** The points of what is placed; undefined as long as the component that it is across has none. */
  const spanOf = ({ place: { between, across }, component }: Placed): Span | undefined => {
    if (between) return [at(between[0]), at(between[1])];
    for (const [item, span] of spans) {
      if (item.label.text !== across?.text) continue;
      // Outside a supply the current runs from its positive terminal to its negative one.
      const outside = drives(item.component) && !drives(component);
      return outside ? poles(item, span) : span;
    }
    return undefined;
  };

  const left = { name: '' };
  const right = chain?.type === 'series' && holdsSupply(chain) ? left : { name: '' };
  if (chain) lay(chain, left, right);
  const chained = [...spans.keys()];
  const inChain = new Set(junctions.keys());
  let waiting = placed;
  for (let before = Infinity; waiting.length < before;) {
    before = waiting.length;
    waiting = waiting.filter((item) => {
      const span = spanOf(item);
      if (span) spans.set(item, span);
      return !span;
    });
  }
  for (const { label, place } of waiting) {
    const id = place.across?.text ?? '';
    const ids = [...spans.keys()].map((item) => item.label.text);
    if (waiting.some((other) => other.label.text === id)) cursor.flag(label, 'across itself', label.text);
    else if (place.across && cursor.tokens.filter(({ text }) => text === id).length === 1) {
      cursor.note(place.across, { code: 'no such component', data: { id, suggestion: nearest(id, ids) } });
    }
  }

  const terminals = ends?.between ?? [];
  const lonely = chain ? namedOnce(cursor, inChain) : [];
  const nowhere = [...terminals, ...(zero ? [zero] : [])].filter((token) => !junctions.has(token.text));
  for (const token of new Set([...lonely, ...nowhere])) {
    cursor.flag(token, 'junction once', token.text);
  }

  let number = 0;
  const seen = new Set<string>();
  const laid = [...chained, ...placed].flatMap((item): readonly Component[] => {
    const { component, label } = item;
    const id = label.text;
    if (component && seen.has(id)) cursor.note(label, { code: 'label used twice', data: { id } });
    seen.add(id);
    const span = spans.get(item);
    if (!span) return [];
    for (const point of span) point.name ||= `${(number += 1)}`;
    const [from, to] = poles(item, span);
    return component ? [{ ...component, from: from.name, to: to.name }] : [];
  });
  if (cursor.mistakes.length === 0)
    for (const { id, wrong } of wrongTwins(laid)) {
      const { label } = [...spans.keys()].find((item) => item.label.text === id) ?? {};
      if (label) cursor.note(label, wrong);
    }
  const components = matched(laid);
  const where = {
    ...(zero && { zero: zero.text }),
    ...(Object.keys(surroundings).length > 0 && { surroundings }),
  };
  const [first, last] = terminals.length > 1 ? terminals.map(({ text }) => text) : [left.name, right.name];
  if (components.some(isSupply)) {
    if (ends) cursor.note(ends.at, { code: 'terminals with a supply', data: {} });
    return { components, ...where };
  }
  if (first && last) return { components, terminals: [first, last], ...where };
  const [a, z] = [placed[0], placed.at(-1)].map((item) => item?.place.between);
  const suggestion = `; ends @${a?.[0].text ?? 'a'}–@${z?.[1].text ?? 'b'}`;
  if (cursor.mistakes.length === 0) cursor.flag({ at: 0 }, 'ends missing', '', suggestion);
  return { components };
}
