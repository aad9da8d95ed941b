import { later } from '../page/index.ts';
import type { Build } from './instrument/instrument.ts';

/** Shows quantities as real instruments do. */
type Instruments = typeof import('./instrument/index.ts');

let come: Instruments | undefined;

/** What shows quantities as real instruments do, once it has come. */
export const instruments = (): Instruments | undefined => come;

/** Fetches it, where that is not done yet. */
export async function fetchInstruments(): Promise<void> {
  come ??= await later(import('./instrument/index.ts'));
}

/** Whether a page asks for more than digits without end. */
export const asksForInstrument = ({ range, resolution, face }: Omit<Build, 'unit'>): boolean =>
  Boolean(range || resolution || face);
