import type { JsonData } from '../../circuit/index.ts';
import type { Sentences } from '../language.ts';
import { did } from './did.ts';

/** What can be wrong with JSON alone, which no page reads. */
export const json: Sentences<JsonData> = {
  'unknown version': ({ found }) =>
    `Version ${found} of the circuit format is not known here; write "version": 1.`,
  'unknown field': ({ field, suggestion }) =>
    `"${field}" is not a field here${did(suggestion && `"${suggestion}"`)}`,
  'missing field': ({ field }) => `The field "${field}" is missing.`,
  'unknown kind': ({ found, suggestion }) =>
    `"${found}" is not a kind of component${did(suggestion && `"${suggestion}"`)}`,
  'not a label': ({ found, suggestion }) => `"${found}" cannot be a label; write one such as ${suggestion}.`,
  'not a node name': ({ found }) => `A node is named by a text of 1 to 64 characters, not by ${found}.`,
  'terminals missing': () =>
    'A network without a supply needs its two terminals, such as "terminals": ["a", "b"].',
  'terminal unknown': ({ found }) => `No component is joined to the terminal "${found}".`,
  'zero unknown': ({ found }) => `No component is joined to “${found}”, so the 0 V mark cannot be there.`,
};
