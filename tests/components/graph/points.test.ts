import { expect } from '@open-wc/testing';
import { say } from '../../../src/engine/index.ts';
import { curvesOf } from '../../../src/components/graph/curves.ts';
import { namesIn } from '../../../src/components/graph/names.ts';
import {
  calledIn,
  lastOf,
  pointAt,
  pointNow,
  settingNear,
  type Point,
} from '../../../src/components/graph/points.ts';
import { turnedOf, type Turned } from '../../../src/components/graph/turned.ts';
import type { Moment } from '../../../src/components/board/moment.ts';
import { momentIn, momentOf, plain, storeOf } from '../moment.ts';

const dimmer = 'B1 6 V + A1 + R1 [4..40] 12 Ω + L1 8 Ω';
const charger = 'B1 [-6..6] 6 V + A1 + R1 12 Ω';
const fog = 'B1 5 V + R1 10 kΩ + LDR1 8 kΩ';

/** What a graph of a board goes along. */
function along({ circuit, start }: Moment, against = ''): Turned {
  const turned = turnedOf(circuit, start, against);
  if ('code' in turned) throw new Error(say(turned));
  return turned;
}
/** The point at a setting, or where the board stands. */
function point(moment: Moment, names: readonly string[], setting?: number): Point {
  const turned = along(moment);
  const { curves } = curvesOf(moment.circuit, turned, names);
  return setting === undefined ? pointNow(moment, turned, curves) : pointAt(moment, turned, curves, setting);
}
const terms = (at: Point): readonly string[] => at.terms.map(({ name, text }) => `${name} = ${plain(text)}`);

describe('the quantities of a graph', () => {
  const names = (of: string, line = dimmer, course = ''): string => {
    const moment = momentOf(line, { course });
    const found = namesIn(of, moment, along(moment));
    return 'code' in found ? say(found) : found.join(' ');
  };

  it('are the total current where none is asked for, else those, none twice, with a p.d. as V or U', () => {
    expect(names('')).to.equal('I_total');
    expect(names(' I_L1,I_A1 I_L1 ')).to.equal('I_L1 I_A1');
    expect(names('V_R1 U_L1 U_R1')).to.equal('V_R1 V_L1');
  });

  it('have one unit, and a sentence names the first that has another, in the letters of the course', () => {
    const sentence = (letter: string): string =>
      `The upright axis has one unit, but ${letter}_R1 is in V and I_A1 is in A. Draw a graph for each.`;
    expect(names('V_R1 V_L1 I_A1 P_L1')).to.equal(sentence('V'));
    expect(names('V_R1 I_A1', dimmer, 'U')).to.equal(sentence('U'));
  });

  it('are of the circuit, and none that the pupil is to find', () => {
    expect(names('I_A1 I_A9')).to.equal('“I_A9” is not a quantity of this circuit; did you mean I_A1?');
    const secret = dimmer.replace('8 Ω', '8 Ω hidden');
    expect(names('R_L1', secret)).to.equal(say({ code: 'unknown', data: {} }));
    expect(names('V_L1', secret)).to.equal('V_L1');
  });
});

describe('a point of a graph', () => {
  it('is what is turned and what each quantity reads there, seen and heard', () => {
    const now = point(momentOf(dimmer), ['I_A1', 'I_L1']);
    expect(now.at).to.equal(12);
    expect(terms(now)).to.deep.equal(['R_R1 = 12 Ω', 'I_A1 = 0.300 A', 'I_L1 = 0.300 A']);
    expect(now.spoken).to.equal(
      'resistance of R1 12 ohms: current through A1 0.300 amperes, current through L1 0.300 amperes',
    );
  });

  it('is in the letter, the word and the decimal sign of the course', () => {
    const now = point(momentOf(dimmer, { course: 'U voltage 2 comma' }), ['V_R1']);
    expect(terms(now)).to.deep.equal(['R_R1 = 12 Ω', 'U_R1 = 3,6 V']);
    expect(now.spoken).to.equal('resistance of R1 12 ohms: voltage across R1 3,6 volts');
  });

  it('at a setting is what the board reads when it is set so', () => {
    const store = storeOf(dimmer);
    const before = momentIn(store);
    for (const setting of [0, 13, lastOf(along(before))]) {
      const there = point(before, ['I_A1', 'I_L1'], setting);
      store.set('R1', `${there.at}`);
      expect(there, `${there.at} Ω`).to.deep.equal(point(momentIn(store), ['I_A1', 'I_L1']));
    }
    expect(lastOf(along(before))).to.equal(36);
  });

  it('has a sign where its curve turns round, and none where it only lies below 0', () => {
    const moment = momentOf(charger);
    expect(terms(point(moment, ['I_A1'], 0))).to.deep.equal(['E_B1 = −6 V', 'I_A1 = −0.500 A']);
    const reversed = momentOf(dimmer.replace('A1', 'A1 reversed'));
    expect(terms(point(reversed, ['I_A1'], 0))).to.deep.equal(['R_R1 = 4 Ω', 'I_A1 = 0.500 A']);
  });

  it('says in words where no current flows, whatever is turned', () => {
    const open = momentOf('B1 6 V + S1 open + A1 + R1 [4..40] 12 Ω');
    expect(point(open, ['I_A1'], 9).spoken).to.equal(
      'resistance of R1 13 ohms: current through A1 no current',
    );
  });

  it('may go along the light, which has no letter', () => {
    expect(terms(point(momentOf(fog), ['V_LDR1']))).to.deep.equal(['light = 10 lx', 'V_LDR1 = 2.22 V']);
    expect(calledIn(momentOf(fog), 'light')).to.equal('light');
    expect(calledIn(momentOf(fog), 'temperature')).to.equal('temperature');
  });

  it('is at the setting nearest to where it is pointed at, and no further than the slider goes', () => {
    const turned = along(momentOf(dimmer));
    const settings = [17.4, 17.6, 4, 40, -100, 1000].map((ohms) => settingNear(turned, ohms));
    expect(settings).to.deep.equal([13, 14, 0, 36, 0, 36]);
  });
});
