import { expect } from '@open-wc/testing';
import { emulateFeatures } from '../emulate-features.ts';
import { bench, press, seen, type StepsBench } from './bench.ts';
import { eventually } from '../eventually.ts';

const pictures = (made: StepsBench): HTMLElement[] => made.all('[part=circuit]');

/** A worked solution whose pictures have come. */
async function drawn(attributes: Readonly<Record<string, string>>): Promise<StepsBench> {
  const made = await bench({ of: 'I_R3', redraw: '', ...attributes });
  await eventually(() => pictures(made).length > 0, 'pictures');
  return made;
}
const labels = (picture: Element): string[] =>
  [...picture.querySelectorAll('text[font-weight="600"]')].map(({ textContent }) => textContent);

describe('the circuit is drawn smaller at each reduction, and larger again', () => {
  it('in still pictures, what the step is about in bold lines, told in words', async () => {
    const made = await drawn({ mode: 'whole' });
    expect(pictures(made).map(labels)).to.deep.equal([
      ['B1', 'A1', 'R1', 'R2', 'R3 + R4'],
      ['B1', 'A1', 'R1', 'R2 ∥ (R3 + R4)'],
      ['B1', 'A1', 'R1 + (R2 ∥ (R3 + R4))'],
      ['B1', 'A1', 'R1', 'R2 ∥ (R3 + R4)'],
      ['B1', 'A1', 'R1', 'R2', 'R3 + R4'],
      ['B1', 'A1', 'R1', 'R2', 'R3', 'R4'],
    ]);
    const [first] = pictures(made);
    expect(first!.ariaLabel).to.contain('R3 + R4');
    const bold = [...first!.querySelectorAll('g')].filter(
      (each) => Number(each.getAttribute('stroke-width')) > 3,
    );
    expect(bold.map((each) => each.dataset['id'])).to.deep.equal(['R3 + R4']);
    await expect(made.element).to.be.accessible();
  });

  it('each with its step, and all on paper', async () => {
    const made = await drawn({});
    const visible = (): number => pictures(made).filter((each) => each.checkVisibility()).length;
    await press(made, 'Next step', 3);
    expect(visible()).to.equal(2);
    expect(seen(made)[1]!.contains(pictures(made)[0]!)).to.equal(true);
    await emulateFeatures({}, 'print');
    expect(visible()).to.equal(6);
  });

  it('with the values of the board', async () => {
    const made = await drawn({ mode: 'whole' });
    const text = (): string => pictures(made)[2]!.textContent;
    expect(text()).to.contain('8.00\u202fΩ');
    made.board.set('R1', '10');
    await eventually(() => text().includes('14.0\u202fΩ'), text());
  });

  it('only where that is asked for', async () => {
    const made = await bench({ of: 'I_R3', mode: 'whole' });
    expect(pictures(made).length).to.equal(0);
    made.element.redraw = true;
    await eventually(() => pictures(made).length === 6);
    made.element.redraw = false;
    await eventually(() => pictures(made).length === 0);
  });
});
