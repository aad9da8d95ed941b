import { forwardPoint, isSupply, type Circuit, type Component } from '../circuit/index.ts';
import type { Fraction, Quantity } from '../quantity/index.ts';
import type { AmmetersAcross } from './ammeters.ts';
import { isBeyond, marked, number, written } from './limit.ts';
import type { Caution, Readings, Remark } from './solution.ts';

/** A fuse of more than so many times the current that it carries would let a fault burn on (common practice: the next rating above it). */
const roomy = 5;
/** How much of its rated current an LED may carry before it is worth a word (common practice). */
const ledMargin = 1.5;

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
    // Side by side they meet at both ends.
    if ([one.from, one.to].every((end) => end === other.from || end === other.to)) return [];
    const [meter, load] = one.kind === 'voltmeter' ? [one, other] : [other, one];
    if (meter.kind === 'voltmeter' && !isSupply(load) && load.kind !== 'voltmeter')
      return [about('voltmeter in series', meter.id, load.id)];
    if (one.kind !== 'supply' || other.kind !== 'supply') return [];
    const drive = ({ from, emf }: typeof one): number => (from === node ? 1 : -1) * Number(emf.value);
    return drive(one) * drive(other) > 0 ? [about('cells in opposition', other.id, one.id)] : [];
  });
  return remarks.filter(
    ({ code, ids }, place) =>
      place === remarks.findIndex((other) => other.code === code && other.ids[0] === ids[0]),
  );
}

/** What a teacher would say at the bench of a circuit that has an answer: what is in the wrong place, or the wrong way round. */
export function benchRemarks(
  circuit: Circuit,
  across: AmmetersAcross,
  readings: Readings<number | Fraction>,
): Remark[] {
  const joints = jointsOf(circuit);
  const ends: readonly string[] = circuit.terminals ?? [];
  return [
    ...pairsOf(joints),
    ...across.others,
    ...circuit.components.flatMap(({ id, from, to }): Remark[] => {
      const isLoose = (node: string): boolean => joints.get(node)?.length === 1 && !ends.includes(node);
      const loose = from === to ? [] : [from, to].filter(isLoose);
      return loose.length > 0 ? [{ code: 'loose end', data: { id, both: loose.length > 1 }, ids: [id] }] : [];
    }),
    ...circuit.components.flatMap((component): Remark[] => {
      const { id, kind } = component;
      if (kind === 'fuse') {
        const current = Math.abs(number(readings.current(id)));
        const rating = Number(component.ratedCurrent.value);
        if (component.blown) return [about('blown', id)];
        return current > 0 && isBeyond(rating, roomy * current) ? [about('fuse too large', id)] : [];
      }
      const isDiode = kind === 'diode' || kind === 'led';
      // Less than this is what a diode has across it where next to nothing flows.
      return isDiode && number(readings.voltage(id)) < -1e-3 ? [about('turned against', id)] : [];
    }),
  ];
}

/** That a fuse or an LED carries more than its rating, or than the margin that it is given. */
function overloaded(
  code: 'fuse would blow' | 'led overloaded',
  { id, hidden }: Component,
  current: number,
  rating: Quantity,
  margin = 1,
): Caution[] {
  if (!isBeyond(current, Number(rating.value) * margin)) return [];
  return [{ code, data: { id, current: written(current, 'A'), rating: marked(rating, hidden) }, ids: [id] }];
}

/** What would happen to parts of the real circuit that are in the wrong place. */
export function benchCautions(
  { components }: Circuit,
  across: AmmetersAcross,
  readings: Readings<number | Fraction>,
): Caution[] {
  const each = components.flatMap((component): Caution[] => {
    const { id, kind } = component;
    const current = number(readings.current(id));
    if (kind === 'fuse' && !component.blown)
      return overloaded('fuse would blow', component, Math.abs(current), component.ratedCurrent);
    if (kind === 'supply' && current * Number(component.emf.value) < 0)
      return [{ code: 'driven backwards', data: { id }, ids: [id] }];
    if (kind === 'led') {
      const [, rating] = forwardPoint(component);
      return overloaded('led overloaded', component, current, rating, ledMargin);
    }
    return [];
  });
  return [...each, ...across.supplies];
}
