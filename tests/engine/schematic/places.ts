import assert from 'node:assert/strict';
import { lastSetting, settingAt, withValue, type Circuit } from '../../../src/engine/circuit/index.ts';
import { drawSchematic, type Drawing, type DrawingStyle } from '../../../src/engine/schematic/index.ts';
import { boxOf, isBridge, keyOf, wireLegs } from './plane.ts';

/** All of a drawing that has a place, as a text: everything but the words and the lines inside the symbols. */
export function geometry(circuit: Circuit, style: DrawingStyle): string {
  const drawing = drawSchematic(circuit, style);
  if (drawing.kind === 'irreducible') throw new Error(drawing.reason);
  return JSON.stringify(drawing, (key, value: unknown) =>
    key === 'text' || key === 'path' || key === 'filled' ? undefined : value,
  );
}

/** What the wires of each node cover: their straight lines as long as may be, wherever they are cut. */
function covered(drawing: Drawing): readonly string[] {
  const lines = new Map<string, [from: number, to: number][]>();
  for (const leg of wireLegs(drawing).filter((each) => !isBridge(each))) {
    const { x, y, width, height } = boxOf(leg);
    const line = `${leg.node} ${height > 0 ? `x ${x}` : `y ${y}`}`;
    const [from, to] = height > 0 ? [y, y + height] : [x, x + width];
    lines.set(line, [...(lines.get(line) ?? []), [from, to]]);
  }
  return [...lines].flatMap(([line, pieces]) => {
    const whole: [from: number, to: number][] = [];
    for (const [from, to] of pieces.sort((a, b) => a[0] - b[0])) {
      const last = whole.at(-1);
      if (last?.[1] === from) last[1] = to;
      else whole.push([from, to]);
    }
    return whole.map(([from, to]) => `${line} from ${from} to ${to}`);
  });
}

/** All of a drawing that has a place, but what is drawn within the symbols and for the wires across them. */
export function places(circuit: Circuit, style: DrawingStyle): unknown {
  const drawing = drawSchematic(circuit, style);
  assert.ok(drawing.kind === 'drawing');
  const { symbols, labels, terminals, wires, arrows } = drawing;
  const joints = wires
    .filter(isBridge)
    .flatMap(({ lines }) => lines.flatMap((line) => [line[0], line.at(-1)]));
  const added = new Set(joints.map((point) => point && keyOf(point)));
  return {
    size: [drawing.width, drawing.height],
    symbols: symbols.map(({ id, at, turn, letter, box, hit }) => ({ id, at, turn, letter, box, hit })),
    labels,
    arrows,
    terminals,
    wires: [...covered(drawing)].sort(),
    dots: wires.flatMap(({ dots }) => dots.map(keyOf).filter((dot) => !added.has(dot))).sort(),
  };
}

/** The circuit with every switch and every slider at one end. */
export function turned(circuit: Circuit, end: 'first' | 'last'): Circuit {
  return circuit.components.reduce((changed, component) => {
    if (component.kind === 'switch') return withValue(changed, component.id, end === 'last');
    const range = component.kind === 'resistor' ? component.range : undefined;
    if (!range) return changed;
    return withValue(changed, component.id, settingAt(range, end === 'last' ? lastSetting(range) : 0));
  }, circuit);
}
