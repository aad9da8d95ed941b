import { expect } from '@open-wc/testing';
import { thinSpace } from '../../../src/engine/core.ts';
import type { ChangeDetail } from '../../../src/components/link/index.ts';
import { bench, named } from './bench.ts';

/** 12 V over 12 Ω is 1 A: X to Y has 6 V, Y to Z has 6 V. */
const slip = 'B1 12 V + S1 closed + @X + R1 2 Ω + R2 4 Ω + @Y + R3 6 Ω + @Z';

type Made = Awaited<ReturnType<typeof bench>>;
const lists = (made: Made): HTMLSelectElement[] => [...made.element.shadowRoot!.querySelectorAll('select')];

async function put(made: Made, end: 0 | 1, point: string): Promise<void> {
  const list = lists(made)[end]!;
  list.value = point;
  list.dispatchEvent(new Event('change', { bubbles: true }));
  await made.element.updateComplete;
}

describe('a movable voltmeter', () => {
  it('starts where it is told to, and reads between the points to which its leads are moved, with the sign', async () => {
    const made = await bench(slip, { of: 'V_X_Y', movable: '' });
    expect(made.part('reading')).to.equal('6.00 V');
    expect(lists(made).map(({ value }) => value)).to.deep.equal(['X', 'Y']);
    await put(made, 1, 'Z');
    expect(made.part('reading')).to.equal('12.0 V');
    expect(named(made)).to.equal('Voltmeter, p.d. between X and Z, 12.0 volts');
    await put(made, 0, 'Z');
    await put(made, 1, 'Y');
    expect(made.part('reading')).to.equal('−6.00 V');
    await put(made, 1, 'Z');
    expect(made.part('reading')).to.match(/^0(\.00)? V$/);
  });

  it('starts at the first point of the line and the last where it is not told', async () => {
    const made = await bench(slip, { movable: '' });
    expect(lists(made).map(({ value }) => value)).to.deep.equal(['X', 'Z']);
    expect(lists(made)[0]!.options.length).to.equal(3);
  });

  it('has a list with a name for each lead, and passes axe', async () => {
    const made = await bench(slip, { of: 'V_X_Y', movable: '' });
    expect(lists(made).map(({ labels }) => labels[0]!.textContent.trim().split(/\s/)[0])).to.deep.equal([
      'from',
      'to',
    ]);
    await expect(made.element).to.be.accessible();
  });

  it('goes back to its start where it is asked for other points', async () => {
    const made = await bench(slip, { of: 'V_X_Y', movable: '' });
    await put(made, 1, 'Z');
    made.element.of = 'V_Y_Z';
    await made.element.updateComplete;
    expect(lists(made).map(({ value }) => value)).to.deep.equal(['Y', 'Z']);
  });

  it('tells the page what is read where a lead was put, with its sign, in volts', async () => {
    const made = await bench(slip, { of: 'V_X_Y', movable: '' });
    const told: unknown[] = [];
    made.page.addEventListener('rheolet-change', (event) => told.push((event as CustomEvent).detail));
    await put(made, 0, 'Z');
    expect(told).to.deep.equal([
      { board: 'quay', id: 'V_Z_Y', quantity: 'V_Z_Y', value: -6, text: `−6.00${thinSpace}V`, unit: 'V' },
    ]);
  });

  it('does not tell what is covered or cannot be read', async () => {
    const made = await bench(slip, { of: 'V_X_Y', movable: '' });
    const told: ChangeDetail[] = [];
    made.page.addEventListener('rheolet-change', (event) => told.push(event.detail));
    made.board.setAttribute('hide', 'readings');
    await made.board.updateComplete;
    await put(made, 1, 'Z');
    expect(told.map(({ value, text }) => [value, text])).to.deep.equal([[NaN, '?']]);
  });

  it('is back at its start when its form is reset, and tells nobody', async () => {
    const made = await bench(slip, { of: 'V_X_Y', movable: '' });
    const form = document.createElement('form');
    made.page.append(form);
    form.append(made.element);
    await put(made, 1, 'Z');
    let told = 0;
    made.page.addEventListener('rheolet-change', () => (told += 1));
    form.reset();
    await made.element.updateComplete;
    expect(lists(made).map(({ value }) => value)).to.deep.equal(['X', 'Y']);
    expect(made.part('reading')).to.equal('6.00 V');
    expect(told).to.equal(0);
  });

  it('says so where there are no two points', async () => {
    const none = await bench('B1 6 V + R1 3 Ω', { movable: '' });
    expect(none.part('problem')).to.match(/two labelled points/);
  });
});
