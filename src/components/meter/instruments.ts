import { later } from '../page/index.ts';
import type { Build } from './instrument/instrument.ts';

/** Shows quantities as real instruments do. */
type Instruments = typeof import('./instrument/index.ts');

let come: Instruments | undefined;

/** What shows quantities as real instruments do, once it has come. */
export const instruments = (): Instruments | undefined => come;

let coming: Promise<void> | undefined;

/** Fetches it, once: what does not come is not asked for again at every reading. */
export function fetchInstruments(): Promise<void> {
  return (coming ??= later(import('./instrument/index.ts')).then((found) => {
    come = found;
  }));
}

/** Whether a page asks for more than digits without end. */
export const asksForInstrument = ({ range, resolution, face }: Omit<Build, 'unit'>): boolean =>
  Boolean(range || resolution || face);
