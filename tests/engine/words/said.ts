import { en, type Catalogue } from '../../../src/engine/index.ts';
import { samples } from './samples.ts';

function saidOf<Code extends keyof Catalogue>(code: Code): [Code, readonly string[]] {
  const sentence: (data: Catalogue[Code]) => string = en.sentences[code];
  return [code, samples[code].map((data: Catalogue[Code]) => sentence(data))];
}

const codes = Object.keys(en.sentences).filter((code): code is keyof Catalogue => code in samples);

/** Each code with what English says of its samples. */
export const said: Readonly<Record<string, readonly string[]>> = Object.fromEntries(codes.map(saidOf));
