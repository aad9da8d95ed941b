// That a picture shows what its drawing holds: every label in words, every symbol in its place, ribbons and glow as large as what they show.
import assert from 'node:assert/strict';
import { test } from 'node:test';
import fc from 'fast-check';
import { parseCircuit } from '../../../src/engine/notation/index.ts';
import { drawingToSVG, halo, inks, ribbonsOf } from '../../../src/engine/picture/index.ts';
import { drawSchematic, type Drawing } from '../../../src/engine/schematic/index.ts';
import { samples } from './samples.ts';

function drawn(line: string): Drawing {
  const drawing = drawSchematic(parseCircuit(line));
  if (drawing.kind === 'irreducible') throw new Error(drawing.reason);
  return drawing;
}

/** The words of every text of a picture, its subscripts on the line. */
const wordsOf = (svg: string): string[] =>
  [...svg.matchAll(/<text [^>]*class="(?:label|value|quantity|reading)"[^>]*>(.*?)<\/text>/g)].map(
    ([, inner = '']) =>
      inner
        .replace(/<[^>]*>/g, '')
        .replaceAll('&lt;', '<')
        .replaceAll('&gt;', '>')
        .replaceAll('&quot;', '"')
        .replaceAll('&amp;', '&'),
  );

test('every label and every value of a drawing is written, where it stands', () => {
  for (const { drawing } of samples) {
    const svg = drawingToSVG(drawing);
    assert.deepEqual(
      wordsOf(svg),
      drawing.labels.map(({ role, text }) => (role === 'quantity' ? text.replace('_', '') : text)),
    );
    const places = [
      ...svg.matchAll(/<text class="(?:label|value|quantity|reading)"[^>]* x="([^"]*)" y="([^"]*)"/g),
    ];
    assert.deepEqual(
      places.map(([, x, y]) => [Number(x), Number(y)]),
      drawing.labels.map(({ at }) => [at.x, at.y]),
    );
  }
});

test('every symbol stands in its place, once', () => {
  for (const { drawing } of samples) {
    const placed = [
      ...drawingToSVG(drawing).matchAll(/data-id="([^"]*)"[^>]*translate\(([-\d.]+) ([-\d.]+)\)/g),
    ];
    assert.deepEqual(
      placed.map(([, id, x, y]) => [id, Number(x), Number(y)]),
      drawing.symbols.map(({ id, at }) => [id, at.x, at.y]),
    );
  }
});

/** The numbers of a path, as far as they go from the middle of all. */
function spread(path: string): number {
  const numbers = [...path.matchAll(/-?\d+/g)].map(Number);
  return Math.max(...numbers) - Math.min(...numbers);
}

test('ribbons are none where no current flows, and the same whichever of current and scale is doubled', () => {
  const drawing = drawn('B1 6 V + A1 + (R1 12 Ω ∥ L1 8 Ω)');
  assert.equal(ribbonsOf(drawing, {}), '', 'without currents');
  assert.equal(ribbonsOf(drawing, { currents: () => 0 }), '');
  fc.assert(
    fc.property(fc.integer({ min: 1, max: 8 }), fc.integer({ min: 1, max: 12 }), (amperes, scale) => {
      const once = ribbonsOf(drawing, { currents: () => 2 * amperes, scale });
      assert.equal(ribbonsOf(drawing, { currents: () => amperes, scale: 2 * scale }), once);
      assert.ok(spread(once) > 0);
    }),
  );
});

test('a lamp glows by as much light as it has, in discs that add up, and not at all in print', () => {
  const drawing = drawn('B1 6 V + (R1 12 Ω ∥ L1 8 Ω)');
  const light = (share: number, ink = inks.light): number[] =>
    [
      ...drawingToSVG(drawing, { ink, glow: (id) => (id === 'L1' ? share : 0) }).matchAll(
        /fill-opacity="([^"]*)"/g,
      ),
    ].map(([, opacity]) => Number(opacity));
  fc.assert(
    fc.property(fc.double({ min: 0, max: 1, noNaN: true }), (share) => {
      const found = light(share);
      const wanted = halo.map((disc) => disc.share * share);
      const sum = (all: readonly number[]): number => all.reduce((a, b) => a + b, 0);
      assert.ok(Math.abs(sum(found) - sum(wanted)) <= 0.005 * halo.length, `${share}: ${found.join()}`);
      assert.ok(found.every((opacity) => opacity > 0 && opacity <= 1));
      assert.deepEqual(light(share, inks.print), []);
      assert.deepEqual(light(share, inks.page), []);
    }),
  );
});

/** Relative luminance (WCAG 2.2). */
function luminance(colour: string): number {
  const short = colour.length === 4 ? colour.replace(/[^#]/g, '$&$&') : colour;
  const [r = 0, g = 0, b = 0] = [1, 3, 5]
    .map((at) => parseInt(short.slice(at, at + 2), 16) / 255)
    .map((part) => (part <= 0.04045 ? part / 12.92 : ((part + 0.055) / 1.055) ** 2.4));
  return 0.2126 * r + 0.7152 * g + 0.0722 * b;
}
const contrast = (a: string, b: string): number => {
  const [dark = 0, bright = 0] = [luminance(a), luminance(b)].sort((x, y) => x - y);
  return (bright + 0.05) / (dark + 0.05);
};

test('in ink, lines stand out from the paper and from ribbons over which they lie (WCAG 2.2: 3 for what is drawn, 4.5 for text)', () => {
  for (const style of ['light', 'print'] as const) {
    const { line, paper, current } = inks[style];
    assert.ok(contrast(line, paper) >= 7, `${style}: line on paper`);
    assert.ok(contrast(line, current) >= 3, `${style}: line on ribbon, ${contrast(line, current)}`);
  }
  assert.ok(contrast(inks.light.current, inks.light.paper) >= 3);
});
