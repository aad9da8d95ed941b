import { isSupply, type Circuit } from '../circuit/index.ts';
import { electrical } from '../topology/index.ts';
import { relation, term, times, type Relation, type Sign, type Term } from './relation.ts';
import { every, flow, isDriver, isJoin, points, type Part } from './structure.ts';

/** A part between two points. */
interface Way {
  readonly part: Part;
  readonly from: string;
  readonly to: string;
}

/** The p.d. across a part is what the p.d.s on the shortest other way between its ends come to. */
function loopOf({ part, from, to }: Way, at: ReadonlyMap<string, readonly Way[]>): readonly Relation[] {
  const came = new Map<string, readonly (readonly [Part, Sign])[]>([[from, []]]);
  for (const [here, way] of came) {
    if (came.has(to)) break;
    for (const other of at.get(here) ?? []) {
      if (other.part === part) continue;
      const next = other.from === here ? other.to : other.from;
      const along = other.from === here ? 1 : -1;
      if (!came.has(next)) came.set(next, [...way, [other.part, along]]);
    }
  }
  const way = came.get(to) ?? [];
  if (way.length === 0) return [];
  const ids = [part, ...way.map(([one]) => one)].flatMap(({ about }) => about);
  const terms = way.map(([one, along]) => term(`V_${one.label}`, times(one.sign, times(part.sign, along))));
  return [relation('p.d.s round a loop', 'sum', ids, `V_${part.label}`, ...terms)];
}

/** What flows in at one point, as the first of it and the others. */
function flowingIn(about: readonly string[], [first, ...others]: readonly Term[]): readonly Relation[] {
  if (!first || others.length === 0) return [];
  const moved = others.map((one) => ({ ...one, sign: times(one.sign, first.sign === 1 ? -1 : 1) }));
  return [relation('currents at a junction', 'sum', about, first.name, ...moved)];
}

/** What flows in at the ends of what has no resistance, such as an ammeter between two branches. */
function atJoins(circuit: Circuit): readonly Relation[] {
  const { live } = electrical(circuit);
  const nodes = new Set(live.filter(isJoin).flatMap(({ from, to }) => [from, to]));
  return [...nodes].flatMap((node) => {
    const here = live.filter((one) => one.from !== one.to && (one.from === node || one.to === node));
    const into = here.map((one): Term => {
      const sign: Sign = (one.to === node) === !isSupply(one) ? 1 : -1;
      return term(`I_${one.id}`, sign);
    });
    const ids = here.map(({ id }) => id);
    return flowingIn(ids, into);
  });
}

/** What holds between parts that are neither in series nor in parallel: what flows in at each point, and the p.d.s round loops. */
export function inWeb(circuit: Circuit, parts: readonly Part[]): readonly Relation[] {
  const point = points(circuit);
  const ways = parts
    .filter(({ from, to }) => from !== to)
    .map((part): Way => ({ part, from: point(part.from), to: point(part.to) }));
  if (ways.length === 0) return [];
  const at = new Map<string, Way[]>();
  for (const way of ways.filter((one) => one.from !== one.to))
    for (const node of [way.from, way.to]) at.set(node, [...(at.get(node) ?? []), way]);
  const junctions = [...at].flatMap(([node, here]) => {
    const into = here.map(({ part, to }) => term(`I_${part.label}`, times(flow(part), to === node ? 1 : -1)));
    const ids = here.flatMap(({ part }) => part.about);
    return flowingIn(ids, into);
  });
  const [only, ...more] = parts.flatMap(every).filter(isDriver);
  const ids = circuit.components.map(({ id }) => id);
  const whole = (letter: string, id: string, ohms: string): Relation =>
    relation(
      'p.d. is current times resistance',
      'product',
      ids,
      `${letter}_${id}`,
      term(`I_${id}`),
      term(ohms),
    );
  const totals =
    only && more.length === 0
      ? [
          whole('V', only.label, 'R_total'),
          ...(only.kind === 'supply' ? [whole('E', only.label, 'R_loop')] : []),
        ]
      : [];
  return [...junctions, ...ways.flatMap((way) => loopOf(way, at)), ...totals, ...atJoins(circuit)];
}
