import { expect, fixture, html } from '@open-wc/testing';
import fc from 'fast-check';
import { heard, named, seen } from '../../../src/components/claim/statement.ts';
import { parseCircuit, quantities, usualCourse } from '../../../src/engine/core.ts';

const circuit = parseCircuit('B1 6 V r 1 Ω + A1 + (R1 4 Ω ∥ (R12 6 Ω + L1 2 Ω))');
const names = fc.constantFrom(...quantities(circuit));

describe('a statement is heard in words', () => {
  const rows = [
    ['V_R1 = V_R2', 'p.d. across R1 equals p.d. across R2'],
    ['I_A1 + I_A2 = I_A3', 'current through A1 plus current through A2 equals current through A3'],
    ['R_total < R_R1', 'total resistance is less than resistance of R1'],
    ['P_R1 > 2 P_R2', 'power of R1 is greater than 2 power of R2'],
    ['V_R1 <= 6 V', 'p.d. across R1 is at most 6 V'],
    ['V_R1 ≥ 6 V', 'p.d. across R1 is at least 6 V'],
    ['I_R1 ≠ 0', 'current through R1 is not equal to 0'],
    ['V_R1 - V_R2 = 0', 'p.d. across R1 minus p.d. across R2 equals 0'],
    ['V_R1 – V_R2 = 0', 'p.d. across R1 minus p.d. across R2 equals 0'],
    ['V_R1 = I_R1 * R_R1', 'p.d. across R1 equals current through R1 times resistance of R1'],
    ['V_R1 / I_R1 = R_R1', 'p.d. across R1 over current through R1 equals resistance of R1'],
    ['I_R1² R_R1 = P_R1', 'current through R1 squared resistance of R1 equals power of R1'],
    [
      'V_B1 = E_B1 − I_B1 r_B1',
      'p.d. across B1 equals e.m.f. of B1 minus current through B1 internal resistance of B1',
    ],
    ['V_p_q = 0', 'p.d. between p and q equals 0'],
    [
      '2 (I_R1 + I_R2) = 3 A',
      '2 open bracket current through R1 plus current through R2 close bracket equals 3 A',
    ],
    ['', ''],
    ['what?', 'what?'],
  ] as const;
  for (const [text, said] of rows)
    it(text || 'none', () => {
      expect(heard(text, usualCourse)).to.equal(said);
    });

  it('with the class’s own word', () => {
    expect(heard('U_R1 > V_R2', { ...usualCourse, wording: 'voltage' })).to.equal(
      'voltage across R1 is greater than voltage across R2',
    );
  });

  it('whatever it is, without an underscore of a name that it knows', () => {
    fc.assert(
      fc.property(names, names, fc.constantFrom('=', '<', '≥', '+', '/'), (a, b, sign) => {
        expect(heard(`${a} ${sign} ${b}`, usualCourse)).to.not.contain('_');
      }),
    );
  });
});

describe('a statement is seen with subscripts', () => {
  const shown = async (text: string): Promise<HTMLElement> => fixture(html`<p>${seen(text)}</p>`);

  it('its names slanted, what belongs to them below', async () => {
    const made = await shown('V_R1 = 2 V_R12 + 3');
    expect([...made.querySelectorAll('var')].map((each) => each.textContent)).to.deep.equal(['V', 'V']);
    expect([...made.querySelectorAll('sub')].map((each) => each.textContent)).to.deep.equal(['R1', 'R12']);
    expect(made.textContent).to.equal('VR1 = 2 VR12 + 3');
  });

  it('nothing of it lost, whatever it is', async () => {
    const text = fc.array(
      fc.oneof(names, fc.constantFrom(' ', '=', '<', '(', ')', '2', '<b>', '&amp;', '_', 'é')),
    );
    await fc.assert(
      fc.asyncProperty(text, async (pieces) => {
        const whole = pieces.join(' ');
        const made = await shown(whole);
        expect(made.querySelectorAll('b').length).to.equal(0);
        expect(made.textContent.replace(/_/g, '')).to.equal(whole.replace(/_/g, ''));
      }),
      { numRuns: 30 },
    );
  });
});

describe('the components of a statement', () => {
  const rows = [
    ['V_R1 = V_R12', ['R1', 'R12']],
    ['V_R12 > 0', ['R12']],
    ['R_total < R_L1', ['L1']],
    ['E_B1 − V_B1 = I_B1 r_B1', ['B1']],
    ['I_A1 = I_A9', ['A1']],
    ['R1', []],
    ['', []],
  ] as const;
  for (const [text, ids] of rows)
    it(`${text || 'none'}: ${ids.join() || 'none'}`, () => {
      expect(named(text, circuit)).to.deep.equal(ids);
    });
});
