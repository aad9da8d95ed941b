import type { SaidOf } from '../words/index.ts';
import type { FormatData, JsonData } from './codes.ts';

/** What is wrong with a circuit given as JSON, or with a new value, and where. `message` is the English sentence. */
export class CircuitFormatError extends Error {
  /** Which sentence. */
  readonly code: keyof FormatData | keyof JsonData;
  /** What the sentence needs. */
  readonly data: SaidOf<FormatData & JsonData>['data'];
  /** Where, from the top: `components[2].resistance`. */
  readonly path: string;
  /** What to write instead; '' where nothing can be suggested. */
  readonly suggestion: string;

  constructor(path: string, said: SaidOf<FormatData & JsonData>, sentence: string) {
    super(`${path && `${path}: `}${sentence}`);
    this.name = 'CircuitFormatError';
    this.code = said.code;
    this.data = said.data;
    this.path = path;
    this.suggestion = 'suggestion' in said.data ? said.data.suggestion : '';
  }
}
