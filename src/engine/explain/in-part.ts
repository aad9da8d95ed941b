import type { Component } from '../circuit/index.ts';
import { relation, term, times, type Relation, type Sign } from './relation.ts';
import { drives, flow, type Part } from './structure.ts';

/**
 * What holds in one part: Ohm's law and the powers, or what a supply's terminals show. `along` is the sign of its current along the tree,
 * where that is known; `isReal` says whether a supply has resistance inside.
 */
export function inPart(part: Part, isReal: boolean, along: Sign | undefined): readonly Relation[] {
  const { label, kind, about } = part;
  const [I, V, R, P, E, r] = ['I', 'V', 'R', 'P', 'E', 'r'].map((letter) => `${letter}_${label}`) as [
    string,
    string,
    string,
    string,
    string,
    string,
  ];
  const squared = along && { squared: times(along, flow(part)) };
  const power = relation('power', 'product', about, P, term(V), term(I));
  const fromCurrent = (left: string, ohms: string): Relation => ({
    ...relation('power from current', 'product', about, left, term(I, 1, 2), term(ohms)),
    ...squared,
  });
  if (kind === 'supply') {
    const emf = relation('power of the e.m.f.', 'product', about, `Pemf_${label}`, term(E), term(I));
    const inner = 'e.m.f. and internal resistance';
    if (!isReal) return [power, emf, relation('no internal resistance', 'sum', about, V, term(E))];
    return [
      power,
      emf,
      fromCurrent(`Pr_${label}`, r),
      relation(inner, 'product', about, `Vr_${label}`, term(I), term(r)),
      relation(inner, 'sum', about, E, term(V), term(`Vr_${label}`)),
    ];
  }
  // A block that drives has no resistance: its p.d. is not in proportion to its current.
  if (drives(part)) return [power];
  const ohm = relation('p.d. is current times resistance', 'product', about, V, term(I), term(R));
  // The total power counts what is lost inside the supply too.
  if (label === 'total') return [ohm];
  return [
    ohm,
    power,
    fromCurrent(P, R),
    { ...relation('power from p.d.', 'product', about, P, term(V, 1, 2), term(R, 1, -1)), ...squared },
  ];
}

/** What holds in a component without resistance: it has no p.d., whatever flows. */
export const inJoin = ({ id }: Component): readonly Relation[] => [
  relation('p.d. is current times resistance', 'product', [id], `V_${id}`, term(`I_${id}`), term(`R_${id}`)),
  relation('power', 'product', [id], `P_${id}`, term(`V_${id}`), term(`I_${id}`)),
];
