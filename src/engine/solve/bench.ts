import { forwardPoint, isSupply, type Circuit, type Component } from '../circuit/index.ts';
import { writeReading, type Fraction } from '../quantity/index.ts';
import { round } from './round.ts';
import type { Caution, Readings, Remark } from './solution.ts';

/** A fuse of more than so many times the current that it carries would let a fault burn on (common practice: the next rating above it). */
const roomy = 5;
/** How much of its rated current an LED may carry before it is worth a word (common practice). */
const ledMargin = 1.5;
/** Keeps what is just at a limit from being beyond it by a rounding. */
const rounding = 1 + 1e-9;

const number = (x: number | Fraction | undefined): number =>
  x === undefined || typeof x === 'number' ? (x ?? 0) : round(x.s * x.n, x.d);

/** The components at each node. */
function jointsOf({ components }: Circuit): Map<string, Component[]> {
  const joints = new Map<string, Component[]>();
  for (const component of components) {
    for (const node of new Set([component.from, component.to])) {
      const there = joints.get(node);
      if (there) there.push(component);
      else joints.set(node, [component]);
    }
  }
  return joints;
}

const about = (code: Remark['code'], id: string, other = ''): Remark =>
  ({ code, data: { id, other }, ids: other ? [id, other] : [id] }) as Remark;

/** What two components do to each other where nothing else joins them: a voltmeter in series, cells against each other. */
function pairsOf(joints: ReadonlyMap<string, readonly Component[]>): Remark[] {
  const remarks = [...joints].flatMap(([node, [one, other, ...more]]): Remark[] => {
    if (!one || !other || more.length > 0) return [];
    const [meter, load] = one.kind === 'voltmeter' ? [one, other] : [other, one];
    const between = [load.from, load.to].every((end) => end === meter.from || end === meter.to);
    if (meter.kind === 'voltmeter' && !isSupply(load) && load.kind !== 'voltmeter' && !between)
      return [about('voltmeter in series', meter.id, load.id)];
    if (
      one.kind !== 'supply' ||
      other.kind !== 'supply' ||
      one.emf.value.n === 0n ||
      other.emf.value.n === 0n
    )
      return [];
    const drives = ({ from, emf }: typeof one): boolean => (from === node) === emf.value.s > 0n;
    const shared = [one.from, one.to].every((end) => end === other.from || end === other.to);
    return drives(one) === drives(other) && !shared ? [about('cells in opposition', other.id, one.id)] : [];
  });
  const seen = new Set<string>();
  return remarks.filter(({ code, ids }) => {
    const before = seen.size;
    return seen.add(`${code} ${ids[0] ?? ''}`).size > before;
  });
}

/** What a teacher would say at the bench of a circuit that has an answer: what is in the wrong place, or the wrong way round. */
export function benchRemarks(circuit: Circuit, readings: Readings<number | Fraction>): Remark[] {
  const joints = jointsOf(circuit);
  const ends: readonly string[] = circuit.terminals ?? [];
  const loose = circuit.components.filter(({ from, to }) =>
    [from, to].some((node) => from !== to && joints.get(node)?.length === 1 && !ends.includes(node)),
  );
  return [
    ...pairsOf(joints),
    ...loose.map(({ id }) => about('loose end', id)),
    ...circuit.components.flatMap((component): Remark[] => {
      const { id, kind } = component;
      if (kind === 'fuse') {
        const current = Math.abs(number(readings.current(id)));
        const rating = Number(component.ratedCurrent.value);
        if (component.blown) return [about('blown', id)];
        return current > 0 && rating > roomy * current * rounding ? [about('fuse too large', id)] : [];
      }
      const isDiode = kind === 'diode' || kind === 'led';
      // Less than this is what a diode has across it where next to nothing flows.
      return isDiode && number(readings.voltage(id)) < -1e-3 ? [about('turned against', id)] : [];
    }),
  ];
}

/** A rating in amperes, unless it is kept from the pupil. */
const shown = ({ hidden }: Component, rating: Fraction): string =>
  hidden ? '?' : writeReading(rating, 'A').text;

/** What would happen to parts of the real circuit that are in the wrong place. */
export function benchCautions({ components }: Circuit, readings: Readings<number | Fraction>): Caution[] {
  const supplies = components.filter(({ kind }) => kind === 'supply');
  return components.flatMap((component): Caution[] => {
    const { id, kind, from, to } = component;
    const current = number(readings.current(id));
    if (kind === 'fuse' && !component.blown) {
      const rating = component.ratedCurrent.value;
      if (Math.abs(current) <= Number(rating) * rounding) return [];
      const [carried, most] = [writeReading(Math.abs(current), 'A').text, shown(component, rating)];
      return [{ code: 'fuse would blow', data: { id, current: carried, rating: most }, ids: [id] }];
    }
    if (kind === 'supply' && current * Number(component.emf.value) < 0)
      return [{ code: 'driven backwards', data: { id }, ids: [id] }];
    if (kind === 'led') {
      const rating = forwardPoint(component)[1].value;
      if (current <= Number(rating) * ledMargin) return [];
      const [carried, most] = [writeReading(current, 'A').text, shown(component, rating)];
      return [{ code: 'led overloaded', data: { id, current: carried, rating: most }, ids: [id] }];
    }
    const supply = supplies.find((each) => [each.from, each.to].every((end) => end === from || end === to));
    if (kind !== 'ammeter' || !supply || from === to || component.condition === 'broken') return [];
    return [{ code: 'ammeter across a supply', data: { id, supply: supply.id }, ids: [id, supply.id] }];
  });
}
