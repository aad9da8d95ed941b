import { isSupply, resistanceOf, type Circuit } from '../circuit/index.ts';
import { relation, term, times, type Relation, type Term } from './relation.ts';
import { isJoin, type Part } from './structure.ts';

/** What lies between two points. */
interface Between {
  readonly from: string;
  readonly to: string;
}

/** The p.d.s along the shortest way through components from one point to another; none where there is no way. */
function along(
  { from, to }: Between,
  components: readonly Part[],
  point: (node: string) => string,
): readonly Term[] | undefined {
  const came = new Map<string, readonly Term[]>([[point(from), []]]);
  for (const [here, way] of came)
    for (const part of components) {
      const [a, b] = [point(part.from), point(part.to)];
      if (a !== here && b !== here) continue;
      const next = a === here ? b : a;
      if (!came.has(next))
        came.set(next, [...way, term(`V_${part.label}`, times(part.sign, a === here ? 1 : -1))]);
    }
  return came.get(point(to));
}

/** The points between which a p.d. is given or asked: `V_p_q`. */
function betweenNamed(named: readonly string[]): readonly (Between & { readonly id: string })[] {
  return named.flatMap((name) => {
    const [, from, to] = /^V_([^_]+)_([^_]+)$/.exec(name) ?? [];
    return from !== undefined && to !== undefined ? [{ id: `${from}_${to}`, from, to }] : [];
  });
}

/**
 * What ideal voltmeters read, the p.d.s across gaps, and the p.d.s between points that are named: the p.d. of parts between the same points, or else what the
 * p.d.s on a way between them come to.
 */
export function acrossParts(
  { components }: Circuit,
  parts: readonly Part[],
  point: (node: string) => string,
  named: readonly string[],
): readonly Relation[] {
  const ends = ({ from, to }: Between): string => [point(from), point(to)].toSorted().join('\n');
  const between = new Map<string, Part[]>();
  for (const part of parts) between.set(ends(part), [...(between.get(ends(part)) ?? []), part]);
  const ids = new Set(components.map(({ id }) => id));
  const joins = components.filter(isJoin);
  const meters = components.filter((one) => !isSupply(one) && resistanceOf(one) === undefined);
  return [...meters, ...betweenNamed(named)].flatMap((meter) => {
    const name = `V_${meter.id}`;
    const own = ids.has(meter.id) ? [meter.id] : [];
    if (point(meter.from) === point(meter.to))
      return joins
        .filter(
          ({ id, from, to }) =>
            id !== meter.id && [from, to].includes(meter.from) && [from, to].includes(meter.to),
        )
        .map(({ id, from }) => {
          const pd = term(`V_${id}`, from === meter.from ? 1 : -1);
          return relation('same p.d.', 'sum', [...own, id], name, pd);
        });
    const beside = between.get(ends(meter)) ?? [];
    if (beside.length === 0) {
      const way =
        along(
          meter,
          parts.filter((part) => part.parts.length === 0),
          point,
        ) ?? [];
      const about = way.map((one) => one.name.slice(2));
      return way.length > 0 ? [relation('p.d.s round a loop', 'sum', [...own, ...about], name, ...way)] : [];
    }
    return beside.map((part) => {
      const pd = term(`V_${part.label}`, times(part.sign, point(part.from) === point(meter.from) ? 1 : -1));
      return relation('same p.d.', 'sum', [...own, ...part.about], name, pd);
    });
  });
}
