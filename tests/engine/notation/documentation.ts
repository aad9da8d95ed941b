import { CircuitSyntaxError, parseCircuit } from '../../../src/engine/notation/index.ts';
import { tableOfMistakes } from './table-of-mistakes.ts';

const code = (text: string): string => `\`${text.replaceAll('|', '\\|')}\``;

function sentence(line: string): string {
  try {
    parseCircuit(line);
  } catch (error) {
    if (error instanceof CircuitSyntaxError) return error.message.replaceAll('|', '\\|');
    throw error;
  }
  throw new Error(`${line} was read`);
}

/** The documentation's table of mistakes: each line that fits into one, and what is said of it. */
function mistakesTable(): string {
  const sections = Object.entries(tableOfMistakes).map(([subject, rows]) => {
    const fitting = rows.filter(({ line }) => line !== '' && line.length < 60 && !/[\n`]/.test(line));
    const lines = fitting.map(({ line }) => `| ${code(line)} | ${sentence(line)} |`);
    return [`### ${subject}`, '', '| line | what is said |', '| --- | --- |', ...lines].join('\n');
  });
  return sections.join('\n\n');
}

/** The documentation with its table of mistakes as it is now. */
export function withMistakes(page: string): string {
  return page.replace(/(<!-- mistakes -->\n)[^]*(<!-- \/mistakes -->)/, (_, start: string, end: string) => {
    return `${start}\n${mistakesTable()}\n\n${end}`;
  });
}
