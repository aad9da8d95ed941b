import { Fraction } from '../../quantity/index.ts';
import { isGiven, type Branch } from './branches.ts';
import type { Draft } from './draft.ts';
import {
  equationText,
  factorInAmperes,
  inAmperes,
  nothing,
  noVolts,
  plus,
  scaled,
  upright,
  type Writing,
} from './linear.ts';
import type { Met, Network } from './network.ts';
import { placeOf, times, type Sign } from '../relation.ts';
import { chained } from '../write.ts';

/** What equations are set up from. */
export interface Ground extends Writing {
  readonly network: Network;
  /** The value of a quantity that is known. */
  readonly value: (name: string) => Fraction | undefined;
  /** Whether a supply has resistance inside. */
  readonly isReal: (id: string) => boolean;
}

/** An e.m.f. of a loop, or a resistance that the current of a branch passes. */
interface LoopTerm {
  readonly sign: Sign;
  readonly name: string;
  readonly branch: Branch;
}

/** The e.m.f.s and the resistances on the way round the loop of a chord, the way that its first e.m.f. drives. */
function roundLoop(chord: Branch, { network, isReal }: Pick<Ground, 'network' | 'isReal'>) {
  const emfs: LoopTerm[] = [];
  const ohms: LoopTerm[] = [];
  for (const [branch, way] of network.loop(chord))
    for (const { part, along } of branch.passed) {
      const isSupply = part.kind === 'supply';
      if (isSupply) emfs.push({ sign: times(way, along), name: `E_${part.label}`, branch });
      if (!isSupply || isReal(part.label))
        ohms.push({ sign: way, name: `${isSupply ? 'r' : 'R'}_${part.label}`, branch });
    }
  const turn = emfs[0]?.sign ?? 1;
  const turned = (one: LoopTerm): LoopTerm => ({ ...one, sign: times(one.sign, turn) });
  return { emfs: emfs.map(turned), ohms: ohms.map(turned) };
}

/** The e.m.f.s, resistances and constant currents that the equations need. */
export const needs = (ground: Pick<Ground, 'network' | 'isReal'>): readonly string[] => [
  ...new Set(
    ground.network.chords.flatMap((chord) => {
      if (isGiven(chord)) return [chord.current];
      const { emfs, ohms } = roundLoop(chord, ground);
      return [...emfs, ...ohms].map(({ name }) => name);
    }),
  ),
];

/** The components that a branch passes. */
export const along = ({ passed }: Branch): readonly string[] => passed.flatMap(({ part }) => part.about);

/** The equation of the junction law for a branch that closes no loop. */
const junctionLaw = ({ current }: Branch): string => `junction of ${current}`;

/** The junction law for the current of a branch, in the unknown currents. */
function ofJunction(branch: Branch, sum: readonly Met[], ground: Ground): Draft {
  const { network, name } = ground;
  const says = network.currents.get(branch) ?? nothing;
  const right = chained(sum.map(([one, sign]) => [sign, name(one.current)]));
  const inner = sum.map(([one]) => one).filter((one) => network.junction.has(one));
  const known = sum.map(([one]) => one).filter((one) => network.given.includes(one));
  const found = `${name(branch.current)} = ${inAmperes(says, ground)}`;
  return {
    rule: 'currents at a junction',
    about: [branch, ...sum.map(([one]) => one)].flatMap(along),
    uses: [...inner.map(junctionLaw), ...known.map(({ current }) => current)],
    gives: junctionLaw(branch),
    equation: `${name(branch.current)} = ${right}`,
    rearranged: inner.length + known.length > 0 ? found : `${name(branch.current)} = ${right}`,
    substituted: found,
    names: [branch, ...sum.map(([one]) => one)].map(({ current }) => placeOf(current)),
    says,
    alone: branch.current,
  };
}

/** The loop law for the loop of a chord, with what the junction law makes of its currents; none where something of it is not known. */
function ofLoop(chord: Branch, ground: Ground): Draft | undefined {
  const { network, value, name } = ground;
  // Round such a loop there is the p.d. of a supply that only it tells.
  if (isGiven(chord)) return undefined;
  const { emfs, ohms } = roundLoop(chord, ground);
  const known = new Map([...emfs, ...ohms].flatMap(({ name: one }) => Object.entries({ [one]: value(one) })));
  const volts = (one: string, sign: Sign): Fraction => (known.get(one) ?? new Fraction(0)).mul(sign);
  if ([...known.values()].includes(undefined)) return undefined;
  const driving = emfs.map((one) => volts(one.name, one.sign)).reduce((a, b) => a.add(b), new Fraction(0));
  const dropping = ohms
    .map((one) => scaled(network.currents.get(one.branch) ?? nothing, volts(one.name, one.sign)))
    .reduce(plus, nothing);
  const left = emfs.length > 0 ? chained(emfs.map((one) => [one.sign, name(one.name)])) : noVolts;
  const written = (current: (branch: Branch) => string): string =>
    `${left} = ${chained(ohms.map((one) => [one.sign, `${current(one.branch)} × ${name(one.name)}`]))}`;
  const says = upright({ number: driving.sub(dropping.number), of: dropping.of });
  const inUnknowns = (branch: Branch): string =>
    factorInAmperes(network.currents.get(branch) ?? nothing, ground);
  const passed = [...new Set(ohms.map(({ branch }) => branch))];
  const laws = passed.filter((one) => network.junction.has(one));
  const given = passed.filter((one) => network.given.includes(one)).map(({ current }) => current);
  return {
    rule: 'e.m.f.s round a loop',
    about: network.loop(chord).flatMap(([branch]) => along(branch)),
    uses: [...laws.map(junctionLaw), ...given, ...known.keys()],
    gives: `loop of ${chord.current}`,
    equation: written(({ current }) => name(current)),
    rearranged: written(inUnknowns),
    substituted: equationText(says, ground),
    names: network
      .loop(chord)
      .flatMap(([branch]) => branch.passed.map(({ part }) => placeOf(`R_${part.label}`))),
    says,
  };
}

/** The equations of the junctions, and of as many loops as there are unknown currents, as far as what they need is known. */
export function setUp(ground: Ground): readonly Draft[] {
  const { junction, chords, given } = ground.network;
  const loops = [...chords, ...given].flatMap((chord) => ofLoop(chord, ground) ?? []);
  return [
    ...[...junction].map(([branch, sum]) => ofJunction(branch, sum, ground)),
    ...loops.filter(({ says }) => says.of.size > 0).slice(0, chords.length),
  ];
}
