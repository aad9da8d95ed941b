import type { ClaimData } from '../../claims/index.ts';
import type { Sentences } from '../../words/index.ts';

const expectations: Readonly<Record<ClaimData['claim expects']['expected'], string>> = {
  value: 'a quantity or a number (such as V_R1 or 2)',
  comparison: 'a comparison (=, <, >, ≤, ≥ or ≠)',
  end: 'the end of the statement',
  bracket: 'a closing bracket',
};

/** What is wrong with a claim. */
export const claims: Sentences<ClaimData> = {
  'claim expects': ({ expected, found }) =>
    `Expected ${expectations[expected]}${found ? `, not “${found}”` : ' here'}.`,
  'not in this circuit': ({ found, suggestion }) =>
    `“${found}” is not a quantity of this circuit.${suggestion ? ` Did you mean ${suggestion}?` : ''}`,
  'units differ': ({ left, right }) =>
    `Only quantities of one kind can be added or compared, not ${left || 'a number'} and ${right || 'a number'}.`,
  'claim too large': ({ limit }) => `A statement can hold at most ${limit} quantities and numbers.`,
  'claim has no value': () => 'At no setting do all these quantities have a value.',
};
