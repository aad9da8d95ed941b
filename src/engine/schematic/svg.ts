import type { Drawing, Point } from './drawing.ts';
import { prepareRibbons } from './ribbons.ts';
import { terminalRadius } from './network.ts';
import { textSize } from './text.ts';

/** What a picture of a drawing shows besides the circuit itself. */
export interface Picture {
  /** Its name, read aloud. */
  readonly title?: string;
  /** Amperes by id, shown as ribbons, and pixels for an ampere. */
  readonly currents?: (id: string) => number;
  readonly scale?: number;
}

const special: Readonly<Record<string, string>> = { '&': '&amp;', '<': '&lt;', '>': '&gt;', '"': '&quot;' };
/** What XML 1.0 does not allow (section 2.2, "Characters") becomes a replacement character. */
const escape = (text: string): string =>
  text
    .replace(/[^\t\n\r\x20-\uD7FF\uE000-\uFFFD\u{10000}-\u{10FFFF}]/gu, '\uFFFD')
    .replace(/[&<>"]/g, (letter) => special[letter] ?? letter);

/** The radius of the half circle in which a wire passes over another. */
const hopRadius = 5;

/** The step from one point to the next one as path data, over the hops that lie between them. */
function stepTo(to: Point, from: Point, hops: readonly Point[]): string {
  const [dx, dy] = [Math.sign(to.x - from.x), Math.sign(to.y - from.y)];
  const along = (p: Point): number => (p.x - from.x) * dx + (p.y - from.y) * dy;
  const aside = (p: Point): number => (p.x - from.x) * dy - (p.y - from.y) * dx;
  const arcs = hops
    .filter((hop) => aside(hop) === 0 && along(hop) > 0 && along(hop) < along(to))
    .sort((p, q) => along(p) - along(q))
    .map(({ x, y }) => {
      const [rx, ry] = [hopRadius * dx, hopRadius * dy];
      return `L${x - rx} ${y - ry}a${hopRadius} ${hopRadius} 0 0 ${dx + dy > 0 ? 1 : 0} ${2 * rx} ${2 * ry}`;
    });
  return `${arcs.join('')}L${to.x} ${to.y}`;
}

/** A line through points as path data, with a small half circle at each of the hops that lie on it. */
export const lineOf = (points: readonly Point[], hops: readonly Point[] = []): string =>
  points.map((p, i) => (i === 0 ? `M${p.x} ${p.y}` : stepTo(p, points[i - 1] ?? p, hops))).join('');

const dot = ({ x, y }: Point, radius: number): string =>
  `M${x - radius} ${y}a${radius} ${radius} 0 0 1 ${2 * radius} 0a${radius} ${radius} 0 0 1 ${-2 * radius} 0Z`;

/** The radius of a junction's dot. */
export const dotRadius = 3.5;

/** Path data of a node's dots. */
export const dotsOf = (dots: readonly Point[]): string => dots.map((point) => dot(point, dotRadius)).join('');

function ribbons(drawing: Drawing, currents: (id: string) => number, scale: number): string {
  const ids = [...new Set(drawing.ribbons.flatMap(({ carries }) => carries.map(({ id }) => id)))];
  const path = prepareRibbons(drawing, ids).path(Float64Array.from(ids, currents), scale);
  return `<path class="ribbons" fill="#ae5494" stroke="none" transform="scale(.01)" d="${path}"/>`;
}

/** The drawing as SVG text that stands by itself: no style sheet, no script, presentation attributes only. */
export function drawingToSVG(drawing: Drawing, picture: Picture = {}): string {
  const { width, height, wires, symbols, labels, terminals } = drawing;
  const { title, currents, scale = 10 } = picture;
  const text = (x: number, y: number, anchor: string, words: string, more = ''): string =>
    `<text${more} x="${x}" y="${y}" text-anchor="${anchor}" fill="currentColor" stroke="none">${escape(words)}</text>`;
  return [
    `<svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 ${width} ${height}" width="${width}" height="${height}" overflow="visible" role="img" fill="none" stroke="currentColor" stroke-width="1.75" font-family="system-ui, sans-serif" font-size="${textSize}">`,
    ...(title === undefined ? [] : [`<title>${escape(title)}</title>`]),
    ...(currents ? [ribbons(drawing, currents, scale)] : []),
    ...wires.map(
      ({ node, lines, dots, hops }) =>
        `<g class="node" data-node="${escape(node)}"><path d="${lines.map((line) => lineOf(line, hops)).join('')}"/>` +
        (dots.length > 0 ? `<path d="${dotsOf(dots)}" fill="currentColor" stroke="none"/>` : '') +
        `</g>`,
    ),
    ...terminals.map(({ x, y }) => `<circle class="terminal" cx="${x}" cy="${y}" r="${terminalRadius}"/>`),
    ...symbols.map(
      ({ id, at, path, filled, letter, condition, ends }) =>
        `<g class="component" data-id="${escape(id)}"${condition ? ` data-condition="${condition}"` : ''} transform="translate(${at.x} ${at.y})">` +
        (ends && `<path d="${ends}"/><g opacity="0.4">`) +
        `<path d="${path}"/>` +
        (filled && `<path d="${filled}" fill="currentColor" stroke="none"/>`) +
        (letter && text(0, 5, 'middle', letter)) +
        (ends && '</g>') +
        `</g>`,
    ),
    ...labels.map(({ id, role, text: words, at, anchor }) =>
      text(
        at.x,
        at.y,
        anchor,
        words,
        ` class="${role}" data-${role}="${escape(id)}"${role === 'label' ? ' font-weight="600"' : ''}`,
      ),
    ),
    '</svg>',
  ].join('');
}
