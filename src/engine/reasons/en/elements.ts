import { all, type Sentences } from '../../words/index.ts';
import type { ReasoningElementData, SettingThere } from '../element-codes.ts';

const claimButtons = { test: 'Test', go: 'Show where it fails' };

const signs: Readonly<Record<string, string>> = {
  '=': 'equals',
  '<': 'is less than',
  '>': 'is greater than',
  '≤': 'is at most',
  '≥': 'is at least',
  '≠': 'is not equal to',
  '+': 'plus',
  '−': 'minus',
  '×': 'times',
  '/': 'over',
  '²': 'squared',
};

const turnedLetters: Readonly<Record<string, string>> = {
  E: 'the e.m.f. of ',
  r: 'the internal resistance of ',
};

const settingThere = ({ id, quantity, text }: SettingThere): string =>
  `${turnedLetters[quantity.charAt(0)] ?? ''}${id} ${quantity ? 'at ' : ''}${text}`;

/** Every setting of what can be turned, or the only one there is. */
const everywhere = (turned: readonly string[]): string =>
  turned.length > 0 ? `at every setting of ${all(turned)}` : 'here, where nothing can be turned';

/** What the elements say that reason. */
export const elements: Sentences<ReasoningElementData> = {
  statement: () => 'Statement',
  'claim button': ({ does }) => claimButtons[does],
  'write so': ({ text }) => `Write ${text}`,
  verdict: ({ verdict, proved, tried, turned }) => {
    const count = `${tried.toLocaleString('en-GB')} settings tried`;
    if (verdict === 'sometimes') return 'Only sometimes true.';
    if (verdict === 'always')
      return proved
        ? `Always true: it holds ${everywhere(turned)}.`
        : `It may always be true: it holds at all of ${count}. That is no proof.`;
    return proved
      ? `Never true: it fails ${everywhere(turned)}.`
      : `It may never be true: it fails at all of ${count}. That is no proof.`;
  },
  'fails at': ({ settings }) =>
    settings.length > 0
      ? `It fails with ${all(settings.map(settingThere))}.`
      : 'It fails as the board stands now.',
  'claim now': ({ left, right, holds, alike }) =>
    `As the board stands now it ${holds ? 'holds' : 'fails'}: the left side is ${left}, the right side ${right}` +
    (alike ? '; they differ in later figures.' : '.'),
  sign: ({ sign }) => signs[sign] ?? sign,
};
