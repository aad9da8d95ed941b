// Circuits that are not series and parallel all the way down, drawn: bridges, webs, dead ends, pieces.
import assert from 'node:assert/strict';
import { test } from 'node:test';
import fc from 'fast-check';
import { circuitFrom, circuitToJSON, type Circuit } from '../../../src/engine/circuit/index.ts';
import { parseCircuit } from '../../../src/engine/notation/index.ts';
import type { WrittenQuantity } from '../../../src/engine/schematic/index.ts';
import { laws } from './laws.ts';
import { hopsOf } from './plane.ts';
import { planarWeb } from './planar-web.ts';
import { coverAll, throughAll, worstJunction } from './ribbon-laws.ts';
import { bipartite, complete } from './web/graphs.ts';
import { drawn, webs } from './web-drawings.ts';
import { webFlow } from './web-flow.ts';

for (const { name, check } of laws) {
  test(`in four hundred random webs ${name}`, () => {
    for (const { circuit, drawing, width } of webs()) {
      try {
        check(drawing, circuit);
      } catch (error) {
        throw new Error(`${width} px: ${JSON.stringify(circuitToJSON(circuit))}`, { cause: error });
      }
    }
  });
}

test('in random webs the ribbons add up at every junction, run through every component, and cover all', () => {
  for (const { circuit, drawing } of webs()) {
    const flow = webFlow(circuit);
    const current = (id: string): number => flow.get(id) ?? NaN;
    assert.ok(worstJunction(drawing, current) < 1e-9, JSON.stringify(circuitToJSON(circuit)));
    throughAll(drawing, circuit, current);
    coverAll(drawing);
  }
});

test('what lies in a plane is drawn without a crossing', () => {
  fc.assert(
    fc.property(planarWeb, (circuit) => {
      assert.equal(hopsOf(drawn(circuit)).length, 0);
    }),
    { numRuns: 60 },
  );
});

/** The circuit of a graph of resistors, between the ends of its first edge. */
function graph(edges: readonly (readonly [number, number])[]): Circuit {
  const components = edges.map(([from, to], i) => {
    return { id: `R${i + 1}`, kind: 'resistor', resistance: '1', from: `n${from}`, to: `n${to}` };
  });
  const [first = [0, 1]] = edges;
  return circuitFrom({ version: 1, components, terminals: first.map((node) => `n${node}`) });
}

const cube = complete(8).filter(([a, b]) => [1, 2, 4].includes(a ^ b));

test('five nodes all joined, and three joined to three others, cross once (K. Kuratowski, Fundamenta Mathematicae 15 (1930) 271, from memory)', () => {
  for (const edges of [complete(5), bipartite(3, 3)]) {
    edges.forEach((_, first) => {
      const circuit = graph([...edges.slice(first), ...edges.slice(0, first)]);
      const drawing = drawn(circuit);
      assert.equal(hopsOf(drawing).length, 1);
      for (const { check } of laws) check(drawing, circuit);
    });
  }
});

test('six nodes all joined cross three times, as few as may be (the crossing number of K6, common knowledge of graph drawing)', () => {
  assert.equal(hopsOf(drawn(graph(complete(6)))).length, 3);
});

test('four nodes all joined, and the edges of a cube, do not cross, whichever edge the terminals are at', () => {
  for (const edges of [complete(4), cube]) {
    edges.forEach((_, first) => {
      const drawing = drawn(graph([...edges.slice(first), ...edges.slice(0, first)]));
      assert.equal(hopsOf(drawing).length, 0);
    });
  }
});

/** The currents of components, each to be written beside its own. */
const currentsOf = (ids: readonly string[]): WrittenQuantity[] =>
  ids.map((id) => ({ name: `I_${id}`, id, kind: 'current', text: `I_${id}`, reading: '' }));

test('the wire across a component stays clear of the hop that its line begins at, where its current is written before it', () => {
  // What a random web came to when all was left out that did not matter.
  const joins = '98 09 70 42 20 46 14 65 17 81 40 38 32 86 95 03 92 28 12 26'.split(' ');
  const shrunk = circuitFrom({
    version: 1,
    components: joins.map((join, i) => {
      const ends = { from: `n${join[0]}`, to: `n${join[1]}` };
      return i === 4
        ? { id: 'R6', kind: 'resistor', resistance: '12', condition: 'bridged', ...ends }
        : { id: `W${i}`, kind: 'wire', ...ends };
    }),
    terminals: ['n4', 'n5'],
  });
  const drawing = drawn(shrunk, 640, { quantities: currentsOf(['R6']) });
  assert.equal(hopsOf(drawing).length, 3);
  for (const { check } of laws) check(drawing, shrunk);
});

test('five or six nodes all joined, and four joined to four others, keep their hops clear with a wire across every component and its current before it', () => {
  for (const edges of [complete(5), complete(6), bipartite(4, 4)]) {
    const { components, terminals } = circuitToJSON(graph(edges));
    const bridged = components.map((component) => ({ ...component, condition: 'bridged' }));
    const circuit = circuitFrom({ version: 1, components: bridged, terminals });
    for (const width of [300, 640]) {
      const drawing = drawn(circuit, width, {
        quantities: currentsOf(circuit.components.map(({ id }) => id)),
      });
      for (const { check } of laws) check(drawing, circuit);
    }
  }
});

const bridge = 'B1 6 V + ((R1 1 Ω + @p + R2 2 Ω) ∥ (R3 3 Ω + @q + R4 4 Ω)); R5 5 Ω @p–@q';

test('a bridge has its four arms in two lines, and between their middles, square to them, what bridges them', () => {
  for (const width of [300, 640]) {
    const { symbols } = drawn(parseCircuit(bridge), width);
    const at = (id: string): { x: number; y: number; upright: boolean } => {
      const found = symbols.find((symbol) => symbol.id === id);
      assert.ok(found);
      return { ...found.at, upright: found.box.height > found.box.width };
    };
    const { upright } = at('R1');
    for (const [a, b] of [
      ['R1', 'R2'],
      ['R3', 'R4'],
    ] as const) {
      assert.equal(at(a).upright, upright);
      assert.equal(at(b).upright, upright);
      assert.equal(upright ? at(a).x : at(a).y, upright ? at(b).x : at(b).y);
    }
    assert.equal(at('R5').upright, !upright);
    const [middle, one, other] = ['R5', 'R1', 'R3'].map((id) => (upright ? at(id).x : at(id).y));
    assert.ok(middle !== undefined && one !== undefined && other !== undefined);
    assert.ok((one < middle && middle < other) || (other < middle && middle < one));
  }
});

test('values, switches, and what is done to a component move nothing in a bridge; what is put in series leaves its form', () => {
  const places = (line: string): string => {
    const { symbols, width, height } = drawn(parseCircuit(line));
    return JSON.stringify([width, height, ...symbols.map(({ id, at }) => [id, at])]);
  };
  const before = places(bridge);
  assert.equal(places(bridge.replace('1 Ω', '9 Ω').replace('4 Ω', '7 Ω')), before);
  assert.equal(places(bridge.replace('R3 3 Ω', 'R3 3 Ω broken').replace('R5 5 Ω', 'R5 5 Ω bridged')), before);
  const longer = drawn(parseCircuit(bridge.replace('R3', 'A1 + R3')));
  const shape = (ids: readonly string[]): boolean[] =>
    ids.map((id) => {
      const box = longer.symbols.find((symbol) => symbol.id === id)?.box;
      assert.ok(box);
      return box.height > box.width;
    });
  const [arm = false, ...others] = shape(['R1', 'R2', 'A1', 'R3', 'R4']);
  assert.ok(others.every((each) => each === arm));
  assert.deepEqual(shape(['R5']), [!arm]);
});

test('wires across a supply and across a switch that face each other in a web do not touch', () => {
  // What a random web came to when all was left out that did not matter.
  const ohms = { resistance: '1' };
  const components = [
    { id: 'B0', from: 'n0', to: 'n8', kind: 'supply', emf: '12', condition: 'bridged' },
    { id: 'LED1', from: 'n1', to: 'n3', kind: 'led' },
    { id: 'S3', from: 'n3', to: 'n5', kind: 'push', closed: false },
    { id: 'W4', from: 'n4', to: 'n0', kind: 'wire' },
    { id: 'A5', from: 'n5', to: 'n2', kind: 'ammeter', ...ohms },
    { id: 'LED7', from: 'n6', to: 'n4', kind: 'led' },
    { id: 'V8', from: 'n7', to: 'n1', kind: 'voltmeter', ...ohms },
    { id: 'B9', from: 'n6', to: 'n2', kind: 'supply', emf: '4.75', form: 'supply' },
    { id: 'H10', from: 'n8', to: 'n7', kind: 'heater', ...ohms },
    { id: 'T11', from: 'n2', to: 'n2', kind: 'thermistor', ...ohms },
    { id: 'S12', from: 'n4', to: 'n7', kind: 'push', closed: true, condition: 'bridged' },
  ];
  const circuit = circuitFrom({ version: 1, components });
  for (const width of [200, 300, 640]) {
    const drawing = drawn(circuit, width);
    for (const { check } of laws) check(drawing, circuit);
  }
});

test('pieces stand beside each other where there is room, else under each other', () => {
  const line = 'B1 6 V @a–@b; R1 1 Ω @b–@a; B2 3 V @c–@d; R2 2 Ω @c–@d';
  const box = (id: string, width: number): { x: number; y: number } => {
    const found = drawn(parseCircuit(line), width).symbols.find((symbol) => symbol.id === id);
    assert.ok(found);
    return found.at;
  };
  assert.equal(box('B1', 640).y, box('B2', 640).y);
  assert.equal(box('B1', 300).x, box('B2', 300).x);
});

/** Work that a machine does as fast as it can, to measure other work by. */
function plainWork(count: number): number {
  let found = 0;
  for (let k = 0; k < 16e5; k++) for (let j = 0; j < count; j++) found = (found * 31 + k * j) % 65_521;
  return found;
}

test('a web of forty components takes no longer than sixty-four million steps of a plain loop, measured beside it', () => {
  const edges = complete(10)
    .filter(([a, b]) => (a * 3 + b) % 9 > 0)
    .slice(0, 40);
  const circuit = graph(edges);
  const used = (work: () => unknown): number => {
    const start = process.cpuUsage();
    work();
    return process.cpuUsage(start).user;
  };
  drawn(circuit);
  const ratios = Array.from({ length: 2 }, () => used(() => drawn(circuit)) / used(() => plainWork(40)));
  assert.ok(Math.min(...ratios) <= 1, ratios.map((ratio) => ratio.toFixed(2)).join());
});
