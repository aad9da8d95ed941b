import assert from 'node:assert/strict';
import { isSupply, type Circuit } from '../../../src/engine/circuit/index.ts';
import type { Drawing, Point, RibbonRun } from '../../../src/engine/schematic/index.ts';
import { boxOf, keyOf, legsOf, lengthOf, touches, wireLegs } from './plane.ts';

/** Pixels for an ampere. */
export const scale = 12;

/** A component's current by id. */
export type Current = (id: string) => number;

/** What flows along a run, added up here from what it says it carries. */
export const along = (run: RibbonRun, current: Current): number =>
  run.carries.reduce((sum, { id, sign }) => sum + sign * current(id), 0);

/** The largest sum of signed widths at any point where runs end, in pixels; open ends of a network apart. */
export function worstJunction(drawing: Drawing, current: Current): number {
  const sums = new Map<string, { sum: number; runs: number }>();
  const add = (point: Point | undefined, width: number): void => {
    if (!point) throw new Error('a run without points');
    const { sum, runs } = sums.get(keyOf(point)) ?? { sum: 0, runs: 0 };
    sums.set(keyOf(point), { sum: sum + width, runs: runs + 1 });
  };
  for (const run of drawing.ribbons) {
    add(run.points[0], -along(run, current) * scale);
    add(run.points.at(-1), along(run, current) * scale);
  }
  return Math.max(0, ...[...sums.values()].map(({ sum, runs }) => (runs > 1 ? Math.abs(sum) : 0)));
}

/** Throws unless one ribbon runs through every component with its own current, in its own direction. */
export function throughAll(drawing: Drawing, { components }: Circuit, current: Current): void {
  const pieces = drawing.ribbons.flatMap((run) =>
    legsOf(run.points).map((leg) => ({ run, leg, box: boxOf(leg) })),
  );
  for (const { id, at, turn } of drawing.symbols) {
    const spot = { ...at, width: 0, height: 0 };
    const through = pieces.filter(({ box }) => touches(box, spot));
    assert.equal(through.length, 1, id);
    const [{ run, leg } = { run: undefined, leg: undefined }] = through;
    assert.ok(run && leg);
    const forward =
      turn === 0
        ? leg.to.x > leg.from.x
        : turn === 180
          ? leg.to.x < leg.from.x
          : turn === 90
            ? leg.to.y > leg.from.y
            : leg.to.y < leg.from.y;
    const supplies = components.some((component) => component.id === id && isSupply(component));
    const own = current(id);
    assert.ok(Math.abs(along(run, current) - (forward === supplies ? -own : own)) < 1e-9, id);
  }
}

/** Throws unless the ribbons cover every wire and every component exactly once. */
export function coverAll(drawing: Drawing): void {
  const total = (legs: readonly { from: Point; to: Point }[]): number =>
    legs.reduce((sum, leg) => sum + lengthOf(leg), 0);
  const ribbons = total(drawing.ribbons.flatMap(({ points }) => legsOf(points)));
  const symbols = drawing.symbols.reduce((sum, { box }) => sum + Math.max(box.width, box.height), 0);
  assert.equal(ribbons, total(wireLegs(drawing)) + symbols);
}
