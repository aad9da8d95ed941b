import assert from 'node:assert/strict';
import { test } from 'node:test';
import fc from 'fast-check';
import { parseCircuit } from '../../../src/engine/notation/index.ts';
import { drawingToSVG, inks } from '../../../src/engine/picture/index.ts';
import { drawSchematic, type Drawing } from '../../../src/engine/schematic/index.ts';
import { samples } from './samples.ts';

function drawn(line: string): Drawing {
  const drawing = drawSchematic(parseCircuit(line));
  if (drawing.kind === 'irreducible') throw new Error(drawing.reason);
  return drawing;
}

/** The values of an attribute, in order. */
const valuesOf = (svg: string, attribute: string): string[] =>
  [...svg.matchAll(new RegExp(` ${attribute}="([^"]*)"`, 'g'))].map(([, value = '']) => value);

test('a title of any characters leaves none that XML 1.0 does not allow', () => {
  fc.assert(
    fc.property(fc.string({ unit: 'binary' }), fc.string(), (any, plain) => {
      const title = `${any}\u0000\u000f\ufffe${plain}\ud800`;
      const svg = drawingToSVG(drawn('B1 6 V + R1 12 Ω'), { title });
      assert.doesNotMatch(svg, /[^\t\n\r -\ud7ff\ue000-\ufffd\u{10000}-\u{10ffff}]/u);
      assert.equal(/<title>([^]*)<\/title>/.exec(svg)?.[1]?.includes('<'), false);
    }),
  );
});

test('every component, label, node and wire across a component can be found by its data attribute', () => {
  for (const { circuit, drawing } of samples) {
    const svg = drawingToSVG(drawing);
    const ids = circuit.components.map(({ id }) => id).sort();
    assert.deepEqual(valuesOf(svg, 'data-id').sort(), ids);
    assert.deepEqual(valuesOf(svg, 'data-label').sort(), ids);
    const bridged = circuit.components.filter(({ condition }) => condition === 'bridged');
    const nodes = new Set([
      ...circuit.components.flatMap(({ from, to }) => [from, to]),
      ...bridged.map(({ id }) => `${id} bridge`),
    ]);
    const conditions = circuit.components.flatMap(({ condition }) => condition ?? []);
    assert.deepEqual(valuesOf(svg, 'data-condition').sort(), conditions.sort());
    assert.deepEqual(new Set(valuesOf(svg, 'data-node')), nodes);
    assert.equal(valuesOf(svg, 'data-node').length, nodes.size);
  }
});

test('the text stands by itself: no style, no script, no address but the name of SVG', () => {
  const svg = drawingToSVG(drawn('B1 6 V + S1 closed + R1 12 Ω'), {
    title: 'A lamp on the quay',
    currents: () => 0.5,
  });
  assert.doesNotMatch(svg, /style|<script|href|url\(|\bon\w+=/);
  assert.deepEqual(svg.match(/http[^"]*/g), ['http://www.w3.org/2000/svg']);
  assert.match(svg, /^<svg [^>]*viewBox="0 0 \d+ \d+"/);
  assert.match(svg, /<title>A lamp on the quay<\/title>/);
});

test('every element is closed, and numbers have no more than two decimals', () => {
  for (const { drawing } of samples) {
    const svg = drawingToSVG(drawing, { currents: () => 1 / 3 });
    const open: string[] = [];
    for (const [, slash, name = '', end] of svg.matchAll(/<(\/?)([a-z]+)[^<>]*?(\/?)>/g)) {
      if (slash) assert.equal(open.pop(), name);
      else if (!end) open.push(name);
    }
    assert.deepEqual(open, []);
    assert.doesNotMatch(svg.replace(/>[^<]*</g, '><'), /\d\.\d{3}|NaN|Infinity|undefined|\de-/);
  }
});

test('what a page may put into a title cannot break out of it', () => {
  const svg = drawingToSVG(drawn('B1 6 V + R1 12 Ω'), { title: '</title><g id="x"> & "quoted"' });
  assert.match(svg, /<title>&lt;\/title&gt;&lt;g id=&quot;x&quot;&gt; &amp; &quot;quoted&quot;<\/title>/);
});

test('ribbons are one path, and there is none without currents', () => {
  const drawing = drawn('B1 6 V + A1 + (R1 12 Ω ∥ L1 8 Ω)');
  assert.equal(drawingToSVG(drawing).split('class="ribbons"').length, 1);
  assert.equal(drawingToSVG(drawing, { currents: () => 1 }).split('class="ribbons"').length, 2);
});

test('in an ink every colour is one of its own, the ground lies under all, and lamps glow where it has light', () => {
  const drawing = drawn('B1 6 V + (R1 12 Ω ∥ L1 8 Ω)');
  for (const style of ['light', 'print'] as const) {
    const { line, paper, current, light } = inks[style];
    const svg = drawingToSVG(drawing, { ink: inks[style], currents: () => 1, glow: () => 0.5 });
    const colours = new Set([...valuesOf(svg, 'fill'), ...valuesOf(svg, 'stroke')]);
    colours.delete('none');
    assert.deepEqual([...colours].sort(), [line, paper, current, light].filter(Boolean).sort());
    assert.match(svg, new RegExp(`^<svg[^>]*><rect class="paper" [^>]*fill="${paper}"`));
    assert.equal(svg.includes('class="light"'), light !== '');
  }
  assert.doesNotMatch(drawingToSVG(drawing, { ink: inks.light, glow: () => 0 }), /class="light"/);
});

test('a label is printed with a subscript after its capitals, and reads as it is written', () => {
  const svg = drawingToSVG(drawn('B1 6 V + Rfog 12 Ω + LDR12 8 Ω; V1 across Rfog'));
  const printed = [...svg.matchAll(/data-label="(\w+)"[^>]*>(.*?)<\/text>/g)].map(([, id, inside = '']) => ({
    id,
    read: inside.replace(/<.*?>/g, ''),
    below: /<tspan dy="3" font-size="0.75em">(.*)<\/tspan>$/.exec(inside)?.[1],
  }));
  assert.deepEqual(
    printed.map(({ read }) => read),
    printed.map(({ id }) => id),
  );
  assert.deepEqual(printed.map(({ below }) => below).sort(), ['1', '1', '12', 'fog']);
});

test('a label without anything after its capitals has no subscript', () => {
  assert.doesNotMatch(drawingToSVG(drawn('lamp X 6 V 3 W')), /tspan/);
});
