import type { Reasoning } from './codes.ts';
import { relation, term, times, type Relation, type Sign } from './relation.ts';
import { drives, flow, type Part } from './structure.ts';

const along = ({ sign }: Part): Sign => sign;

/** What is the same in all parts of a block. */
const equal = ({ parts, label }: Part, rule: Reasoning, letter: string, sign: (one: Part) => Sign) =>
  parts.map((one) =>
    relation(rule, 'sum', one.about, `${letter}_${one.label}`, term(`${letter}_${label}`, sign(one))),
  );

/** What adds up over the parts of a block. */
const added = ({ parts, label, about }: Part, rule: Reasoning, letter: string, sign: (one: Part) => Sign) =>
  relation(
    rule,
    'sum',
    about,
    `${letter}_${label}`,
    ...parts.map((one) => term(`${letter}_${one.label}`, sign(one))),
  );

function inSeries(part: Part, hasSupply: boolean): readonly Relation[] {
  const { parts, about, label } = part;
  const pairs = parts.slice(1).map((one, index) => {
    const before = parts[index] ?? one;
    const current = term(`I_${before.label}`, times(flow(one), flow(before)));
    return relation('same current', 'sum', [...before.about, ...one.about], `I_${one.label}`, current);
  });
  const shared = [...pairs, ...equal(part, 'same current', 'I', flow), added(part, 'p.d.s add', 'V', along)];
  if (hasSupply) return shared;
  const shares = parts.map((one) => {
    const factors = [term(`V_${label}`, one.sign), term(`R_${one.label}`), term(`R_${label}`, 1, -1)];
    return relation('potential divider', 'product', about, `V_${one.label}`, ...factors);
  });
  return [...shared, added(part, 'resistances in series', 'R', () => 1), ...shares];
}

function inParallel(part: Part, hasSupply: boolean): readonly Relation[] {
  const { parts, about, label } = part;
  const shared = [...equal(part, 'same p.d.', 'V', along), added(part, 'currents add', 'I', flow)];
  if (hasSupply) return shared;
  const resistances = parts.map((one) => term(`R_${one.label}`));
  const reciprocals = relation('resistances in parallel', 'reciprocals', about, `R_${label}`, ...resistances);
  // A current for each, their sum, and the resistance: dearer than the same with a p.d. that is known.
  const thought = { rule: 'trial p.d.', trial: `V_${label}`, cost: 3 * parts.length + 4 } as const;
  const two = relation('product over sum', 'product over sum', about, `R_${label}`, ...resistances);
  return [...shared, ...(parts.length === 2 ? [two] : []), reciprocals, { ...reciprocals, ...thought }];
}

/** What holds between a part and the parts that it is made of, all the way down. */
export function inBlock(part: Part): readonly Relation[] {
  const { kind, parts, about, label, joins } = part;
  const hasSupply = drives(part);
  return [
    ...joins.map(({ id, sign }) => {
      const current = term(`I_${label}`, times(sign, flow(part)));
      return relation('same current', 'sum', [...about, id], `I_${id}`, current);
    }),
    ...parts.flatMap(inBlock),
    ...(kind === 'series' ? inSeries(part, hasSupply) : []),
    ...(kind === 'parallel' ? inParallel(part, hasSupply) : []),
  ];
}
