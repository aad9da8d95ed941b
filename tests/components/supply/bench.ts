import { nextFrame } from '@open-wc/testing';
import '../../../src/components/supply/define.ts';
import { circuitFrom, type Circuit } from '../../../src/engine/index.ts';
import type { RheoletSupply } from '../../../src/components/supply/index.ts';
import { besideBoard, settled, type BesideBoard } from '../beside-board.ts';

/** The quay's battery, with a range for the e.m.f., for the internal resistance, for both or for neither. */
export function battery(
  range?: readonly [string, string],
  inside?: readonly [string, string],
  emf = '6',
): Circuit {
  const of = (ends: readonly [string, string] | undefined): object | undefined =>
    ends && { min: ends[0], max: ends[1], step: '0.5' };
  const supply = {
    id: 'B1',
    kind: 'supply',
    from: 'a',
    to: 'z',
    emf,
    internalResistance: '0.5',
    ...(range ? { range: of(range) } : {}),
    ...(inside ? { internalRange: of(inside) } : {}),
  };
  const lamp = { id: 'L1', kind: 'lamp', from: 'a', to: 'z', resistance: '8' };
  return circuitFrom({ version: 1, components: [supply, lamp] });
}

/** A supply's control beside a board. */
export async function supplyBeside(
  circuit: string | Circuit,
  attributes: Readonly<Record<string, string>> = {},
): Promise<BesideBoard<RheoletSupply>> {
  const text = typeof circuit === 'string' ? circuit : 'B1 6 V + L1 8 Ω';
  const bench = await besideBoard<RheoletSupply>('rheolet-supply', text, attributes);
  if (typeof circuit !== 'string') {
    bench.board.circuit = circuit;
    await bench.board.ready;
    await settled();
  }
  return bench;
}

const inputs = (supply: RheoletSupply, part: string): HTMLInputElement[] => [
  ...supply.shadowRoot!.querySelectorAll<HTMLInputElement>(`input[part=${part}]`),
];
/** Its sliders and its boxes, E before r. */
export const sliders = (supply: RheoletSupply): HTMLInputElement[] => inputs(supply, 'slider');
export const boxes = (supply: RheoletSupply): HTMLInputElement[] => inputs(supply, 'value');
export const steps = (supply: RheoletSupply): HTMLButtonElement[] => [
  ...supply.shadowRoot!.querySelectorAll<HTMLButtonElement>('[part=step]'),
];
/** What the sliders are called. */
export const names = (supply: RheoletSupply): (string | null)[] =>
  sliders(supply).map((slider) => slider.getAttribute('aria-label'));
/** What the boxes show, blanks plain. */
export const shown = (supply: RheoletSupply): string[] =>
  boxes(supply).map(({ value }) => value.replace(/\s/g, ' '));

/** Types into a box and leaves it, as the browser tells it. */
export async function type(box: HTMLInputElement, typed: string): Promise<void> {
  box.value = typed;
  box.dispatchEvent(new Event('input', { bubbles: true, composed: true }));
  box.dispatchEvent(new Event('change', { bubbles: true }));
  await nextFrame();
  await settled();
}
