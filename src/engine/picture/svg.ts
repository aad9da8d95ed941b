import {
  dotsOf,
  labelParts,
  lineOf,
  prepareRibbons,
  subscript,
  terminalRadius,
  textSize,
  type Drawing,
  type PlacedLabel,
  type PlacedMark,
  type PlacedSymbol,
  type QuantityArrow,
} from '../schematic/index.ts';
import { fonts, halo, inks, type Ink } from './ink.ts';

/** What a picture of a drawing shows besides the circuit itself. */
export interface Picture {
  /** Its name, read aloud. */
  readonly title?: string;
  /** Amperes by id, shown as ribbons, and pixels for an ampere. */
  readonly currents?: (id: string) => number;
  readonly scale?: number;
  /** How brightly a lamp glows, by id: 0 to 1. */
  readonly glow?: (id: string) => number;
  /** The edges of ribbons that are held, as path data. */
  readonly held?: string;
  /** Its colours; by default those of the text that it stands in. */
  readonly ink?: Ink;
}

const special: Readonly<Record<string, string>> = { '&': '&amp;', '<': '&lt;', '>': '&gt;', '"': '&quot;' };
/** What XML 1.0 does not allow (section 2.2, "Characters") becomes a replacement character. */
const escape = (text: string): string =>
  text
    .replace(/[^\t\n\r\x20-\uD7FF\uE000-\uFFFD\u{10000}-\u{10FFFF}]/gu, '\uFFFD')
    .replace(/[&<>"]/g, (letter) => special[letter] ?? letter);

/** All ribbons of a picture as path data in hundredths of a pixel; '' where it has none. */
export function ribbonsOf(drawing: Drawing, { currents, scale = 10 }: Picture): string {
  if (!currents) return '';
  const ids = [...new Set(drawing.ribbons.flatMap(({ carries }) => carries.map(({ id }) => id)))];
  return prepareRibbons(drawing, ids).path(Float64Array.from(ids, currents), scale);
}

function text(x: number, y: number, anchor: string, words: string, { line }: Ink, more = ''): string {
  return `<text${more} x="${x}" y="${y}" text-anchor="${anchor}" fill="${line}" stroke="none">${words}</text>`;
}

function symbol({ id, at, path, filled, letter, condition, ends }: PlacedSymbol, ink: Ink): string {
  return (
    `<g class="component" data-id="${escape(id)}"${condition ? ` data-condition="${condition}"` : ''} transform="translate(${at.x} ${at.y})">` +
    (ends && `<path d="${ends}"/><g opacity="0.4">`) +
    `<path d="${path}"/>` +
    (filled && `<path d="${filled}" fill="${ink.line}" stroke="none"/>`) +
    (letter && text(0, 5, 'middle', escape(letter), ink)) +
    (ends && '</g>') +
    `</g>`
  );
}

/** A label with its subscript. */
function withSubscript(label: string, more = ''): string {
  const [letters, below] = labelParts(label);
  const { size, drop } = subscript;
  return letters + (below && `<tspan dy="${drop}" font-size="${size}em"${more}>${escape(below)}</tspan>`);
}

function zero({ node, at, path, filled, text: words, baseline, anchor }: PlacedMark, ink: Ink): string {
  return (
    `<g class="zero" data-zero="${escape(node)}"><g transform="translate(${at.x} ${at.y})"><path d="${path}"/>` +
    `<path d="${filled}" fill="${ink.line}" stroke="none"/></g>${text(baseline.x, baseline.y, anchor, words, ink)}</g>`
  );
}

function arrow({ name, kind, at, path, filled }: QuantityArrow, { line }: Ink): string {
  return (
    `<g class="${kind}" data-arrow="${escape(name)}" transform="translate(${at.x} ${at.y})">` +
    (path && `<path d="${path}" stroke-width="1"/>`) +
    `<path d="${filled}" fill="${line}" stroke="none"/></g>`
  );
}

function label({ id, role, text: words, at, anchor }: PlacedLabel, ink: Ink): string {
  const bold = role === 'label' ? ' font-weight="600"' : '';
  const italic = role === 'quantity' ? ' font-style="italic"' : '';
  const upright = role === 'quantity' ? ' font-style="normal"' : '';
  const shown = role === 'value' || role === 'reading' ? escape(words) : withSubscript(words, upright);
  return text(
    at.x,
    at.y,
    anchor,
    shown,
    ink,
    ` class="${role}" data-${role}="${escape(id)}"${bold}${italic}`,
  );
}

/** The glow of the lamps: a few discs on one another, since a gradient would need a name of its own in the page. */
function glows({ symbols }: Drawing, { glow, ink = inks.page }: Picture): string[] {
  if (!glow || !ink.light) return [];
  return symbols.flatMap(({ id, at }) =>
    halo
      .map(({ radius, share }) => ({ radius, opacity: Number((share * glow(id)).toFixed(2)) }))
      .filter(({ opacity }) => opacity > 0)
      .map(
        ({ radius, opacity }) =>
          `<circle class="light" cx="${at.x}" cy="${at.y}" r="${radius}" fill="${ink.light}" fill-opacity="${opacity}" stroke="none"/>`,
      ),
  );
}

/** The drawing as SVG text that stands by itself: no style sheet, no script, presentation attributes only. */
export function drawingToSVG(drawing: Drawing, picture: Picture = {}): string {
  const { width, height, wires, symbols, labels, terminals, mark, arrows = [] } = drawing;
  const { title, held, ink = inks.page } = picture;
  const ribbons = ribbonsOf(drawing, picture);
  return [
    `<svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 ${width} ${height}" width="${width}" height="${height}" overflow="visible" role="img" fill="none" stroke="${ink.line}" stroke-width="1.75" font-family="${fonts}" font-size="${textSize}">`,
    ...(title === undefined ? [] : [`<title>${escape(title)}</title>`]),
    ink.paper &&
      `<rect class="paper" width="${width}" height="${height}" fill="${ink.paper}" stroke="none"/>`,
    ...glows(drawing, picture),
    picture.currents
      ? `<path class="ribbons" fill="${ink.current}" stroke="none" transform="scale(.01)" d="${ribbons}"/>`
      : '',
    held ? `<path class="held" stroke-width="1" stroke-dasharray="3 3" d="${held}"/>` : '',
    ...wires.map(
      ({ node, lines, dots, hops }) =>
        `<g class="node" data-node="${escape(node)}"><path d="${lines.map((line) => lineOf(line, hops)).join('')}"/>` +
        (dots.length > 0 ? `<path d="${dotsOf(dots)}" fill="${ink.line}" stroke="none"/>` : '') +
        `</g>`,
    ),
    ...terminals.map(({ x, y }) => `<circle class="terminal" cx="${x}" cy="${y}" r="${terminalRadius}"/>`),
    mark ? zero(mark, ink) : '',
    ...arrows.map((each) => arrow(each, ink)),
    ...symbols.map((each) => symbol(each, ink)),
    ...labels.map((each) => label(each, ink)),
    '</svg>',
  ].join('');
}
