import { CircuitSyntaxError, parseCircuit, say, type Circuit } from '../../engine/core.ts';

/** Why there is no circuit. */
export interface SourceProblem {
  readonly code: string;
  readonly sentence: string;
}

/** The lines that the page has read, and their circuits: boards of the same line share what follows from it. */
const circuits = new Map<string, Circuit>();
const most = 100;

function read(line: string): Circuit {
  const circuit = circuits.get(line) ?? parseCircuit(line);
  if (circuits.size < most) circuits.set(line, circuit);
  return circuit;
}

/** The circuit that a page gives as notation or as it is, or the sentence what is wrong with it, and where. */
export function readSource(source: string | Circuit): Circuit | SourceProblem {
  if (typeof source !== 'string') return source;
  if (source.trim() === '') {
    const code = 'board without circuit';
    return { code, sentence: say({ code, data: {} }) };
  }
  try {
    return read(source);
  } catch (error) {
    if (!(error instanceof CircuitSyntaxError)) throw error;
    const { code, line, column, message } = error;
    return { code, sentence: say({ code: 'mistake at', data: { line, column, sentence: message } }) };
  }
}
