import type { RuleData } from '../../rules/index.ts';
import type { Sentences } from '../language.ts';
import { all } from './list.ts';

/** Why a rule applies, or does not. */
export const rules: Sentences<RuleData> = {
  'one path': ({ ids }) => `${all(ids)} lie on one path.`,
};
