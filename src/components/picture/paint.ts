import {
  dotsOf,
  labelParts,
  lineOf,
  subscript,
  terminalRadius,
  textSize,
  type Drawing,
  type PlacedLabel,
  type PlacedMark,
  type PlacedSymbol,
  type QuantityArrow,
} from '../../engine/core.ts';
import { fonts, halo, ribbonsOf, type Ink, type Picture } from '../../engine/picture/index.ts';

type Pen = CanvasRenderingContext2D;

/** Does something with the pen, which is then as it was. */
function apart(pen: Pen, draw: () => void): void {
  pen.save();
  draw();
  pen.restore();
}

const fontOf = (weight: number, size: number): string => `${weight} ${size}px ${fonts}`;

/** The part of a text's width that stands before its anchor. */
const before = { start: 0, middle: 0.5, end: 1 } as const;

/** A text, or a label with its subscript. */
function label(pen: Pen, { role, text, at, anchor }: PlacedLabel): void {
  const [letters, below] = role === 'value' || role === 'reading' ? [text, ''] : labelParts(text);
  const weight = role === 'label' ? 600 : 400;
  const italic = role === 'quantity' ? 'italic ' : '';
  const [font, smaller] = [italic + fontOf(weight, textSize), fontOf(weight, subscript.size * textSize)];
  pen.font = smaller;
  const added = pen.measureText(below).width;
  pen.font = font;
  const { width } = pen.measureText(letters);
  const x = at.x - before[anchor] * (width + added);
  pen.textAlign = 'left';
  pen.fillText(letters, x, at.y);
  pen.font = smaller;
  pen.fillText(below, x + width, at.y + subscript.drop);
}

function symbol(pen: Pen, { at, path, filled, letter, ends }: PlacedSymbol): void {
  apart(pen, () => {
    pen.translate(at.x, at.y);
    pen.stroke(new Path2D(ends));
    if (ends) pen.globalAlpha = 0.4;
    pen.stroke(new Path2D(path));
    pen.fill(new Path2D(filled));
    pen.font = fontOf(400, textSize);
    pen.textAlign = 'center';
    pen.fillText(letter, 0, 5);
  });
}

function arrow(pen: Pen, { at, path, filled }: QuantityArrow): void {
  apart(pen, () => {
    pen.translate(at.x, at.y);
    pen.lineWidth = 1;
    pen.stroke(new Path2D(path));
    pen.fill(new Path2D(filled));
  });
}

function zero(pen: Pen, { at, path, filled, text, baseline, anchor, textBox }: PlacedMark): void {
  apart(pen, () => {
    pen.translate(at.x, at.y);
    pen.stroke(new Path2D(path));
    pen.fill(new Path2D(filled));
  });
  label(pen, { id: '', role: 'value', text, at: baseline, anchor, box: textBox });
}

function ground(pen: Pen, drawing: Drawing, picture: Picture, ink: Ink): void {
  const { width, height, symbols } = drawing;
  pen.fillStyle = ink.paper;
  pen.fillRect(0, 0, width, height);
  pen.fillStyle = ink.light;
  for (const { id, at } of ink.light ? symbols : [])
    for (const { radius, share } of halo) {
      pen.globalAlpha = share * (picture.glow?.(id) ?? 0);
      pen.beginPath();
      pen.arc(at.x, at.y, radius, 0, 2 * Math.PI);
      pen.fill();
    }
  pen.globalAlpha = 1;
}

/** Paints a drawing, one unit a pixel: what its SVG shows, without an image, which a strict page would refuse to load. */
export function paint(pen: Pen, drawing: Drawing, picture: Picture, ink: Ink): void {
  const { wires, symbols, labels, terminals, mark, arrows = [] } = drawing;
  ground(pen, drawing, picture, ink);
  apart(pen, () => {
    pen.scale(0.01, 0.01);
    pen.fillStyle = ink.current;
    pen.fill(new Path2D(ribbonsOf(drawing, picture)));
  });
  pen.strokeStyle = pen.fillStyle = ink.line;
  apart(pen, () => {
    pen.setLineDash([3, 3]);
    pen.stroke(new Path2D(picture.held));
  });
  pen.lineWidth = 1.75;
  for (const { lines, dots, hops } of wires) {
    pen.stroke(new Path2D(lines.map((line) => lineOf(line, hops)).join('')));
    pen.fill(new Path2D(dotsOf(dots)));
  }
  for (const { x, y } of terminals) {
    pen.beginPath();
    pen.arc(x, y, terminalRadius, 0, 2 * Math.PI);
    pen.stroke();
  }
  if (mark) zero(pen, mark);
  for (const each of arrows) arrow(pen, each);
  for (const each of symbols) symbol(pen, each);
  for (const each of labels) label(pen, each);
}
