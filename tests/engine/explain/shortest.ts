import { resistanceOf, type Circuit } from '../../../src/engine/circuit/index.ts';
import { seriesParallel, type Irreducible, type Tree } from '../../../src/engine/topology/index.ts';

/** Quantities of which any one follows in one step from all the others. */
type Bond = readonly string[];

interface Node {
  readonly label: string;
  readonly parts: readonly Node[];
  readonly kind: 'component' | 'series' | 'parallel';
  readonly joins: readonly string[];
}

/** The circuit outside its supply as a pupil sees it, what has no resistance left out. */
function outside(circuit: Circuit): Node | undefined {
  const joins = new Set(
    circuit.components
      .filter((one) => one.kind !== 'supply' && resistanceOf(one)?.equals(0))
      .map(({ id }) => id),
  );
  const of = (tree: Tree | Irreducible): Node | undefined => {
    if (tree.kind === 'irreducible') return undefined;
    if (tree.kind === 'component') {
      if (tree.id.startsWith('B') || joins.has(tree.id)) return undefined;
      return { label: tree.id, parts: [], kind: 'component', joins: [] };
    }
    const parts = tree.parts.map(of).filter((part) => part !== undefined);
    const own = tree.parts.flatMap((one) => (one.kind === 'component' && joins.has(one.id) ? [one.id] : []));
    const [only] = parts;
    if (only && parts.length === 1) return { ...only, joins: [...only.joins, ...own] };
    const label = `(${parts.map((part) => part.label).join(tree.kind === 'series' ? '+' : '∥')})`;
    return { label, parts, kind: tree.kind, joins: own };
  };
  return of(seriesParallel(circuit));
}

/** Every single step that a textbook allows in a circuit round one supply B1, as the quantities that it ties together. */
export function bondsOf(circuit: Circuit, named: readonly string[] = []): readonly Bond[] {
  const whole = outside(circuit);
  if (!whole) return [];
  const isReal = circuit.components.some((one) => one.kind === 'supply' && one.internalResistance);
  const ohms = whole.parts.length > 0 ? 'R_total' : `R_${whole.label}`;
  const name = (letter: string, { label }: Node): string => {
    if (label !== whole.label || whole.parts.length === 0) return `${letter}_${label}`;
    return letter === 'R' ? 'R_total' : `${letter}_B1`;
  };
  const inside = (node: Node): readonly Bond[] => {
    const [V, I, R, P] = ['V', 'I', 'R', 'P'].map((letter) => name(letter, node)) as [
      string,
      string,
      string,
      string,
    ];
    const isWhole = node === whole && node.parts.length > 0;
    const own: Bond[] = [
      [V, I, R],
      ...(isWhole
        ? []
        : [
            [P, V, I],
            [P, I, R],
            [P, V, R],
          ]),
      ...node.joins.map((id) => [`I_${id}`, I]),
    ];
    const { parts, kind } = node;
    const each = (letter: string): readonly string[] => parts.map((one) => name(letter, one));
    const shared = kind === 'series' ? 'I' : 'V';
    const bonds = parts.flatMap((one, index) => [
      [name(shared, one), name(shared, node)],
      ...(kind === 'series' && index > 0 ? [[name('I', one), name('I', parts[index - 1] ?? one)]] : []),
      ...(kind === 'series' ? [[name('V', one), V, name('R', one), R]] : []),
    ]);
    const sums =
      parts.length > 0
        ? [
            [R, ...each('R')],
            [kind === 'series' ? V : I, ...each(kind === 'series' ? 'V' : 'I')],
          ]
        : [];
    return [...own, ...bonds, ...sums, ...parts.flatMap(inside)];
  };
  return closed(
    [
      ...inside(whole),
      ['P_B1', 'V_B1', 'I_B1'],
      ['Pemf_B1', 'E_B1', 'I_B1'],
      ['P_total', 'Pemf_B1'],
      ['I_total', 'I_B1'],
      ...whole.joins.map((id) => [`I_${id}`, 'I_B1']),
      ...(whole.parts.length > 0
        ? []
        : [
            ['V_B1', `V_${whole.label}`],
            ['I_B1', `I_${whole.label}`],
            ['R_total', ohms],
          ]),
      ...(isReal
        ? [
            ['R_loop', ohms, 'r_B1'],
            ['E_B1', 'I_B1', 'R_loop'],
            ['Vr_B1', 'I_B1', 'r_B1'],
            ['E_B1', 'V_B1', 'Vr_B1'],
            ['Pr_B1', 'I_B1', 'r_B1'],
          ]
        : [
            ['R_loop', ohms],
            ['E_B1', 'V_B1'],
            ['E_B1', 'I_B1', ohms],
          ]),
    ],
    named,
  );
}

/**
 * With every two that are the same by one rule as a step of its own, whatever is between them, currents by currents, p.d.s by p.d.s; and
 * with sums of currents or of p.d.s called by what is the same and named in the question.
 */
function closed(bonds: readonly Bond[], named: readonly string[]): readonly Bond[] {
  const groups: Set<string>[] = [];
  for (const [a = '', b = '', ...others] of bonds) {
    if (others.length > 0 || !b.startsWith(a.charAt(0)) || !/^[IV]_/.test(a)) continue;
    const met = groups.filter((group) => group.has(a) || group.has(b));
    for (const group of met) groups.splice(groups.indexOf(group), 1);
    groups.push(new Set([a, b, ...met.flatMap((group) => [...group])]));
  }
  const pairs = groups.flatMap((group) => {
    const names = [...group];
    return names.flatMap((one, index) => names.slice(index + 1).map((other) => [one, other]));
  });
  const alike = (name: string): readonly string[] => {
    const group = groups.find((one) => one.has(name));
    return [name, ...named.filter((one) => one !== name && group?.has(one))];
  };
  const isSum = (bond: Bond): boolean =>
    bond.length > 2 && ['I_', 'V_'].some((letter) => bond.every((name) => name.startsWith(letter)));
  const sums = bonds
    .filter(isSum)
    .flatMap((bond) =>
      bond.reduce<readonly Bond[]>(
        (all, name) => all.flatMap((one) => alike(name).map((other) => [...one, other])),
        [[]],
      ),
    );
  return [...bonds, ...pairs, ...sums];
}

/** Whether a quantity can be derived in at most so many steps: every way is tried, from the end backwards, none in a circle. */
export function isWithin(
  bonds: readonly Bond[],
  given: ReadonlySet<string>,
  find: string,
  steps: number,
): boolean {
  const at = new Map<string, Bond[]>();
  for (const bond of bonds) for (const name of bond) at.set(name, [...(at.get(name) ?? []), bond]);
  const needs = new Map<string, Bond>();
  const leadsTo = (from: string, to: string): boolean =>
    from === to || (needs.get(from) ?? []).some((name) => name !== from && leadsTo(name, to));
  const settle = (open: readonly string[]): boolean => {
    const [name, ...rest] = open;
    if (name === undefined) return true;
    if (needs.size + open.length > steps) return false;
    return (at.get(name) ?? []).some((bond) => {
      const uses = bond.filter((one) => one !== name && !given.has(one));
      if (uses.some((one) => needs.has(one) && leadsTo(one, name))) return false;
      needs.set(
        name,
        bond.filter((one) => one === name || !given.has(one)),
      );
      const more = uses.filter((one) => !needs.has(one) && !rest.includes(one));
      const isPossible = settle([...rest, ...more]);
      needs.delete(name);
      return isPossible;
    });
  };
  return given.has(find) || settle([find]);
}
