import '../../../src/components/switch/define.ts';
import type { RheoletSwitch } from '../../../src/components/switch/index.ts';
import { besideBoard, type BesideBoard } from '../beside-board.ts';

/** The pump with its switch, open. */
export const pump = 'B1 6 V + S1 open + L1 8 Ω';

/** A switch's control beside a board. */
export const switchBeside = (
  circuit: string,
  attributes: Readonly<Record<string, string>> = {},
): Promise<BesideBoard<RheoletSwitch>> => besideBoard<RheoletSwitch>('rheolet-switch', circuit, attributes);

/** Its button. */
export function buttonOf(element: RheoletSwitch): HTMLButtonElement {
  const button = element.shadowRoot?.querySelector('button');
  if (!button) throw new Error('no button');
  return button;
}
