import {
  dotsOf,
  lineOf,
  terminalRadius,
  textSize,
  type Drawing,
  type PlacedSymbol,
} from '../../engine/core.ts';
import { fonts, halo, ribbonsOf, type Ink, type Picture } from '../../engine/picture/index.ts';

type Pen = CanvasRenderingContext2D;

/** Does something with the pen, which is then as it was. */
function apart(pen: Pen, draw: () => void): void {
  pen.save();
  draw();
  pen.restore();
}

function write(pen: Pen, words: string, x: number, y: number, anchor: PlacedText, weight = 400): void {
  pen.font = `${weight} ${textSize}px ${fonts}`;
  pen.textAlign = anchors[anchor];
  pen.fillText(words, x, y);
}

type PlacedText = Drawing['labels'][number]['anchor'];
const anchors = { start: 'left', middle: 'center', end: 'right' } as const;

function symbol(pen: Pen, { at, path, filled, letter, ends }: PlacedSymbol): void {
  apart(pen, () => {
    pen.translate(at.x, at.y);
    pen.stroke(new Path2D(ends));
    if (ends) pen.globalAlpha = 0.4;
    pen.stroke(new Path2D(path));
    pen.fill(new Path2D(filled));
    write(pen, letter, 0, 5, 'middle');
  });
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
  const { wires, symbols, labels, terminals } = drawing;
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
  for (const each of symbols) symbol(pen, each);
  for (const { role, text, at, anchor } of labels)
    write(pen, text, at.x, at.y, anchor, role === 'label' ? 600 : 400);
}
