import { CircuitSyntaxError, parseCircuit, say, type Circuit } from '../../engine/core.ts';

/** Why there is no circuit. */
export interface SourceProblem {
  readonly code: string;
  readonly sentence: string;
}

/** The circuit that a page gives as notation or as it is, or the sentence what is wrong with it, and where. */
export function readSource(source: string | Circuit): Circuit | SourceProblem {
  if (typeof source !== 'string') return source;
  if (source.trim() === '') {
    const code = 'board without circuit';
    return { code, sentence: say({ code, data: {} }) };
  }
  try {
    return parseCircuit(source);
  } catch (error) {
    if (!(error instanceof CircuitSyntaxError)) throw error;
    const { code, line, column, message } = error;
    return { code, sentence: say({ code: 'mistake at', data: { line, column, sentence: message } }) };
  }
}
