import { expect } from '@open-wc/testing';
import { besideBoard, settled, type BesideBoard } from '../beside-board.ts';
import '../../../src/components/all.ts';
import type { RheoletTable } from '../../../src/components/table/index.ts';
import { emulateFeatures } from '../emulate-features.ts';
import { eventually } from '../eventually.ts';

/** 6 V over 12 Ω and 8 Ω: 0.3 A. */
const line = 'B1 6 V + A1 + R1 [4..40] 12 Ω + L1 8 Ω';
type Attributes = Readonly<Record<string, string>>;

/** An element beside a board that holds its readings. */
async function held<E extends HTMLElement>(
  tag: string,
  attributes: Attributes,
  circuit = line,
): Promise<BesideBoard<E>> {
  const made = await besideBoard<E>(tag, circuit, attributes);
  made.board.hold();
  await eventually(() => made.board.snapshot?.comparison);
  await settled();
  return made;
}

async function set(made: Pick<BesideBoard<HTMLElement>, 'board'>, id: string, value: string): Promise<void> {
  made.board.set(id, value);
  await settled();
}

describe('a value that is held', () => {
  for (const [name, attributes, ohms, change] of [
    ['by how much and in what ratio', { of: 'I_A1' }, '22', 'fell by 0.100 A, × 0.667'],
    ['in its unit', { of: 'I_A1', unit: 'mA' }, '22', 'fell by 100 mA, × 0.667'],
    ['in its figures', { of: 'I_A1', figures: '5' }, '22', 'fell by 0.10000 A, × 0.66667'],
    ['in fractions', { of: 'I_A1', as: 'fraction' }, '10', 'rose by 1/30 A, × 10/9'],
    ['of a resistance', { of: 'R_total' }, '22', 'rose by 10.0 Ω, × 1.50'],
    ['of what is given', { of: 'E_B1' }, '22', 'the same'],
  ] as const)
    it(`shows what it has done, ${name}`, async () => {
      const made = await held('rheolet-value', attributes);
      expect(made.part('change')).to.equal('the same');
      await set(made, 'R1', ohms);
      expect(made.part('change')).to.equal(change);
    });

  it('is heard with it, in words', async () => {
    const made = await held('rheolet-value', { of: 'I_A1' });
    await set(made, 'R1', '22');
    expect(made.texts('.heard')).to.deep.equal(['0.200 amperes (fell by 0.100 amperes, × 0.667)']);
    expect(made.all('[part=change]')[0]!.getAttribute('aria-hidden')).to.equal('true');
  });

  it('follows the course', async () => {
    const made = await held('rheolet-value', { of: 'I_A1' });
    made.board.course = '2 comma';
    await set(made, 'R1', '22');
    expect(made.part('change')).to.equal('fell by 0,10 A, × 0,67');
  });

  it('has room for all that may come, so that its sentence stands still', async () => {
    const made = await held('rheolet-value', { of: 'I_A1' });
    await set(made, 'R1', '40');
    const { width } = made.all('[part=change]')[0]!.getBoundingClientRect();
    for (const ohms of ['4', '12', '33', '17']) {
      await set(made, 'R1', ohms);
      expect(made.all('[part=change]')[0]!.getBoundingClientRect().width, ohms).to.equal(width);
    }
  });

  it('shows nothing more once it is let go, nor of what has no reading', async () => {
    const made = await held('rheolet-value', { of: 'R_total' });
    made.board.release();
    await settled();
    expect(made.all('[part=change]')).to.deep.equal([]);
    const covered = await held('rheolet-value', { of: 'I_A1' });
    covered.board.hide = 'readings';
    await settled();
    expect(covered.everything).to.not.contain('the same');
  });

  it('says what it was where it has no value now', async () => {
    const made = await held('rheolet-value', { of: 'R_total' }, 'B1 6 V + S1 closed + R1 12 Ω');
    await set(made, 'S1', 'open');
    expect([made.part('value'), made.part('change')]).to.deep.equal(['no path for a current', 'was 12.0 Ω']);
    made.board.hold();
    await set(made, 'S1', 'closed');
    expect([made.part('value'), made.part('change')]).to.deep.equal(['12.0 Ω', 'was no path for a current']);
  });
});

describe('a meter that is held', () => {
  for (const [name, attributes, ohms, change] of [
    ['as its digits', { of: 'A1' }, '22', 'fell by 0.100 A, × 0.667'],
    ['in its steps', { of: 'A1', range: '0.6 A', resolution: '0.02 A' }, '22', 'fell by 0.10 A, × 0.667'],
    // 6 V over 20.1 Ω: 0.2985 A, which rounds to 0.30 A
    [
      'less than a step',
      { of: 'A1', range: '0.6 A', resolution: '0.02 A' },
      '12.1',
      'fell by less than 0.02 A',
    ],
    ['beyond its range now', { of: 'A1', range: '0.4 A' }, '4', 'was 0.300 A'],
  ] as const)
    it(`shows what it has done, ${name}`, async () => {
      const made = await held('rheolet-meter', attributes, line.replace('[4..40]', '[4..40 step 0.1]'));
      expect(made.part('change')).to.equal('the same');
      await set(made, 'R1', ohms);
      expect(made.part('change')).to.equal(change);
      expect(made.all('[part=change]')[0]!.getAttribute('aria-hidden')).to.equal('true');
    });

  it('says nothing of what lies beyond its range then and now', async () => {
    const made = await held('rheolet-meter', { of: 'A1', range: '0.2 A' });
    await set(made, 'R1', '4');
    expect(made.all('[part=change]')).to.deep.equal([]);
  });

  it('is named by it', async () => {
    const made = await held('rheolet-meter', { of: 'A1' });
    await set(made, 'R1', '22');
    expect(made.heard('[role=img]')).to.equal('Ammeter A1, 0.200 amperes, fell by 0.100 amperes, × 0.667');
  });

  it('has a mark where its needle stood', async () => {
    const made = await held('rheolet-meter', { of: 'A1', face: 'needle', range: '0.6 A' });
    const turned = (part: string): string => made.all(part)[0]?.getAttribute('transform') ?? '';
    expect(turned('.held')).to.equal(turned('.needle'));
    await set(made, 'R1', '22');
    // A scale of 100° for 0.6 A, 0 at −50°
    expect([turned('.held'), turned('.needle')]).to.deep.equal(['rotate(0.00)', 'rotate(-16.67)']);
    made.board.release();
    await settled();
    expect(made.all('.held')).to.deep.equal([]);
  });
});

describe('a table that is held', () => {
  it('shows under each reading what it has done, and goes out without', async () => {
    const made = await held<RheoletTable>('rheolet-table', { columns: 'V I/mA R' });
    await set(made, 'R1', '22');
    expect(made.texts('td')).to.deep.equal([
      '6.00the same',
      '200fell by 100 mA, × 0.667',
      '—',
      '4.40rose by 0.800 V, × 1.22',
      '200fell by 100 mA, × 0.667',
      '22.0rose by 10.0 Ω, × 1.83',
      '1.60fell by 0.800 V, × 0.667',
      '200fell by 100 mA, × 0.667',
      '8.00the same',
    ]);
    expect(made.element.toCSV()).to.not.match(/rose|fell|same/);
  });

  it('shows nothing of cells that the pupil fills in', async () => {
    const made = await held('rheolet-table', { mode: 'blank' });
    await set(made, 'R1', '22');
    expect(made.everything).to.not.match(/rose|fell/);
  });
});

for (const [tag, attributes] of [
  ['rheolet-value', { of: 'I_A1' }],
  ['rheolet-meter', { of: 'A1' }],
  ['rheolet-meter', { of: 'A1', face: 'needle' }],
  ['rheolet-table', {}],
] as const)
  for (const scheme of ['light', 'dark'] as const)
    it(`${tag} is without a finding of axe while it compares, ${scheme}`, async () => {
      await emulateFeatures({ 'prefers-color-scheme': scheme });
      const made = await held(tag, attributes);
      Object.assign(made.page.style, {
        colorScheme: 'light dark',
        background: 'Canvas',
        color: 'CanvasText',
      });
      await set(made, 'R1', '22');
      await expect(made.element).to.be.accessible();
    });
