import { expect, fixture, html, nextFrame } from '@open-wc/testing';
import fc from 'fast-check';
import type { RheoletBoard } from '../../../src/components/board/index.ts';
import type { RheoletClaim } from '../../../src/components/claim/index.ts';
import { settled } from '../beside-board.ts';
import { bench, press, quay, tested } from './bench.ts';

describe('a claim on a page that changes', () => {
  const line = 'B1 6 V + R1 [2..40] 12 Ω + R2 12 Ω';

  it('stands before its board', async () => {
    const page = await fixture<HTMLElement>(
      html`<div>
        <rheolet-claim board="pump" claim="V_R1 = V_R2"></rheolet-claim>
        <rheolet-board id="pump" circuit=${line}></rheolet-board>
      </div>`,
    );
    await page.querySelector<RheoletBoard>('rheolet-board')!.ready;
    await settled();
    const claim = page.querySelector<RheoletClaim>('rheolet-claim')!;
    claim.shadowRoot!.querySelector<HTMLButtonElement>('[part=act]')!.click();
    await claim.updateComplete;
    expect(claim.shadowRoot!.querySelector('[part=verdict]')!.textContent).to.contain('Only sometimes');
  });

  it('stands inside its board', async () => {
    const board = await fixture<RheoletBoard>(
      html`<rheolet-board circuit=${line}
        ><rheolet-claim claim="V_R1 = 2 V_R2"></rheolet-claim
      ></rheolet-board>`,
    );
    await board.ready;
    await settled();
    const claim = board.querySelector<RheoletClaim>('rheolet-claim')!;
    expect(claim.shadowRoot!.querySelector('input')!.value).to.equal('V_R1 = 2 V_R2');
    expect(claim.checkVisibility()).to.equal(true);
  });

  it('keeps what the pupil wrote when it is moved, and tests it there', async () => {
    const made = await bench(quay);
    await tested(made, 'I_A1 > I_A2');
    const other = document.createElement('section');
    made.page.append(other);
    other.append(made.element);
    await settled();
    expect(made.element.value).to.equal('I_A1 > I_A2');
    expect(made.part('verdict')).to.contain('Only sometimes');
  });

  it('tests it anew on another circuit, and says what is no more there', async () => {
    const made = await bench(quay);
    expect(await tested(made, 'V_R1 = V_R2')).to.contain('Always true');
    await made.show(line);
    expect(made.part('verdict')).to.contain('Only sometimes true.');
    await made.show('B1 6 V + R1 4 Ω');
    expect(made.part('problem')).to.equal('“V_R2” is not a quantity of this circuit. Did you mean V_R1?');
    await made.show(quay);
    expect(made.part('verdict')).to.contain('Always true');
  });

  it('is quiet on a board without a circuit', async () => {
    const made = await bench(quay, { claim: 'V_R1 = V_R2' });
    await made.show('B1 6 V + R1');
    expect(made.part('problem')).to.equal('The board has no circuit that can be read.');
    expect(made.all('input').length).to.equal(0);
    await made.show(quay);
    expect(made.all('input').length).to.equal(1);
  });

  it('works in a circuit with curves, where a verdict is what was found', async () => {
    const made = await bench('B1 [1..6] 3 V + R1 100 Ω + D1');
    await nextFrame();
    expect(await tested(made, 'I_R1 = I_D1')).to.contain('lways');
    expect(await tested(made, 'V_R1 + V_D1 = V_B1')).to.contain('lways');
  });
});

describe('what a claim says of the present is what the board reads', () => {
  it('at random settings', async () => {
    const made = await bench('B1 6 V + R1 [1..40] 12 Ω + (R2 [1..40] 12 Ω ∥ R3 12 Ω)');
    await tested(made, 'I_R2 < I_R3');
    const ohms = fc.integer({ min: 1, max: 40 });
    await fc.assert(
      fc.asyncProperty(ohms, ohms, async (one, two) => {
        made.board.set('R1', one);
        made.board.set('R2', two);
        await nextFrame();
        await made.element.updateComplete;
        const read = (id: string): number => Number(made.board.solution!.current(id));
        expect(made.part('now').includes('it holds')).to.equal(read('R2') < read('R3'));
      }),
      { numRuns: 20 },
    );
  });

  it('and where it is shown to fail, it fails', async () => {
    const made = await bench('B1 [1..12] 6 V r [0..2] 1 Ω + R1 [1..40] 12 Ω + (R2 [1..40] 12 Ω ∥ R3 12 Ω)');
    const statements = [
      'V_R1 > V_R2',
      'I_R2 = I_R3',
      'R_total < 20',
      'P_R1 ≤ 3 W',
      'V_B1 < 12 V',
      'V_R1 ≠ 6 V',
    ];
    for (const statement of statements) {
      made.board.reset();
      await settled();
      expect(await tested(made, statement), statement).to.contain('Only sometimes');
      await press(made, 'Show where it fails');
      expect(made.part('now'), statement).to.contain('it fails');
      expect(made.part('verdict'), statement).to.contain('as the board stands now');
    }
  });
});
