import { expect } from '@open-wc/testing';
import { choiceOf } from '../../../src/components/rules/choice.ts';
import { checkRules, parseCircuit, type Rule } from '../../../src/engine/index.ts';
import { bench, held, pump, quay } from './bench.ts';

const all = [...new Set(checkRules(parseCircuit(quay)).map(({ rule }) => rule))];
const names = all.map((rule) => (rule === 'V = IR' ? 'V=IR' : rule.replaceAll(' ', '-')));

describe('a page chooses rules by their names', () => {
  const rows: readonly (readonly [string, readonly Rule[]])[] = [
    ['', all],
    ['series-current', ['series current']],
    ['series-p.d.', ['series p.d.']],
    ['series-pd', ['series p.d.']],
    ['series-voltage, parallel-voltage', ['series p.d.', 'parallel p.d.']],
    ['series', ['series current', 'series p.d.', 'series resistance']],
    ['Junction LOOP', ['junction law', 'loop law']],
    ['junction-law', ['junction law']],
    ['ohm', ['V = IR']],
    ["ohm's", ['V = IR']],
    ['V=IR', ['V = IR']],
    ['power', ['power balance']],
    ['power-balance  power-balance', ['power balance']],
    ['power,junction', ['junction law', 'power balance']],
  ];
  for (const [text, rules] of rows)
    it(`“${text}”`, () => {
      expect(choiceOf(text, all)).to.deep.equal({ rules });
    });

  it('and hears what a name was probably meant to be', () => {
    expect(choiceOf('series-curent power', all)).to.deep.equal({
      rules: ['power balance'],
      unknown: { found: 'series-curent', suggestion: 'series-current', choices: names },
    });
    expect(choiceOf('xyzzy', all).unknown).to.deep.equal({
      found: 'xyzzy',
      suggestion: '',
      choices: names,
    });
    expect(choiceOf('== !!', all).rules).to.deep.equal([]);
  });

  it('every rule the engine has can be chosen alone', () => {
    all.forEach((rule, place) => {
      for (const name of [rule.replaceAll(' ', '-'), names[place] ?? ''])
        expect(choiceOf(name, all)).to.deep.equal({ rules: [rule] });
    });
  });
});

describe('a page chooses a component', () => {
  it('and sees the rules about it only', async () => {
    const made = await bench(quay, { of: 'L1', rules: 'ohm loop' });
    expect(held(made).map(([symbols]) => symbols)).to.deep.equal(['VB1 = VL1', 'VL1 = IL1 × RL1']);
  });

  it('that is not there: a sentence with the nearest, and one event', async () => {
    const problems: unknown[] = [];
    const listen = ({ detail }: WindowEventMap['rheolet-problem']): void => void problems.push(detail);
    window.addEventListener('rheolet-problem', listen);
    const made = await bench(pump, { of: 'R3', board: 'quay' });
    await made.show(`${pump} # again`);
    window.removeEventListener('rheolet-problem', listen);
    const text = 'There is no R3 in this circuit; did you mean R1?';
    expect(made.part('problem')).to.equal(text);
    expect(problems).to.deep.equal([{ board: 'quay', id: 'R3', code: 'no such component', text }]);
  });

  it('a rule that is not there: a sentence, and the others are shown all the same', async () => {
    const made = await bench(pump, { rules: 'junctoin-law ohm' });
    expect(made.part('problem')).to.equal(
      '“junctoin-law” is not a name of a rule; did you mean junction-law?',
    );
    expect(held(made).length).to.equal(2);
  });
});
