import { html, type TemplateResult } from 'lit';
import type { Circuit, Course } from '../../engine/core.ts';
import { say } from '../../engine/reasons/index.ts';
import { calledQuantity } from '../link/index.ts';

/** The name of a quantity in a statement: `V_R1`, `R_total`, `V_p_q`. */
const name = /(\p{L}+)_([\p{L}\d_]+)/gu;

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
export function heard(text: string, course: Course): string {
  const said = text
    .replaceAll('<=', '≤')
    .replaceAll('>=', '≥')
    .replace(/[-–]/g, '−')
    .replace(/[*·]/g, '×')
    .replace(/[=<>≤≥≠+−×/²()]/g, (sign) => ` ${say({ code: 'sign', data: { sign } })} `)
    .replace(name, (quantity) => calledQuantity(quantity, course));
  return said.replace(/\s+/g, ' ').trim();
}
