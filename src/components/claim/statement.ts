import { html, type TemplateResult } from 'lit';
import type { Circuit, Course } from '../../engine/core.ts';
import { say } from '../../engine/reasons/index.ts';

/** The name of a quantity in a statement: `V_R1`, `R_total`, `V_p_q`. */
const name = /(\p{L}+)_([\p{L}\d_]+)/gu;

/** A statement as the engine reads it: U is a V there. */
export const asRead = (text: string): string => text.replace(/\bU_/g, 'V_');

/** A statement in the letters of a course. */
export const inLetters = (text: string, { letter }: Course): string => text.replace(/\b[UV]_/g, `${letter}_`);

/** The components that a statement is about. */
export function named(text: string, { components }: Circuit): readonly string[] {
  const found = [...text.matchAll(name)].map(([, , subscript]) => subscript);
  return components.map(({ id }) => id).filter((id) => found.includes(id));
}

/** A statement for the eye, its names with subscripts. */
export function seen(text: string): readonly (string | TemplateResult)[] {
  const pieces: (string | TemplateResult)[] = [];
  let end = 0;
  for (const { 0: whole, 1: letter, 2: subscript, index } of text.matchAll(name)) {
    pieces.push(text.slice(end, index), html`<var>${letter}</var><sub>${subscript}</sub>`);
    end = index + whole.length;
  }
  return [...pieces, text.slice(end)];
}

/** A statement for the ear. */
export function heard(text: string, { wording }: Course): string {
  const said = text
    .replaceAll('<=', '≤')
    .replaceAll('>=', '≥')
    .replace(/[-–]/g, '−')
    .replace(/[*·]/g, '×')
    .replace(/[=<>≤≥≠+−×/²]/g, (sign) => ` ${say({ code: 'sign', data: { sign } })} `)
    .replace(name, (_, letter: string, of: string) =>
      say({ code: 'measures', data: { letter: letter === 'U' ? 'V' : letter, of, wording, ohms: '' } }),
    );
  return said.replace(/\s+/g, ' ').trim();
}
