import { readFileSync } from 'node:fs';
import { format } from 'prettier';

const markers = /(<!-- tables -->)[^]*(<!-- end of tables -->)/;

const cell = (text = '') => String(text).replace(/\s+/g, ' ').replaceAll('|', '\\|').trim();
const code = (text) => (text ? `\`${cell(text)}\`` : '');

function table(title, items, columns) {
  if (items.length === 0) return '';
  const row = (cells) => `| ${cells.join(' | ')} |`;
  const heads = Object.keys(columns);
  const rows = items.map((item) => row(heads.map((head) => columns[head](item))));
  return [row(heads.map((head, at) => (at ? head : title))), row(heads.map(() => '---')), ...rows, ''].join(
    '\n',
  );
}

const meaning = { meaning: ({ description }) => cell(description) };
const typed = { name: ({ name }) => code(name), type: ({ type }) => code(type?.text), ...meaning };
const named = { name: ({ name }) => (name ? code(name) : 'the default'), ...meaning };

function section({
  tagName,
  name: className,
  description,
  attributes = [],
  members = [],
  events = [],
  ...rest
}) {
  const fields = members.filter(({ kind, attribute }) => kind === 'field' && !attribute);
  const methods = members.filter(({ kind }) => kind === 'method');
  const signature = ({ name, static: isStatic, parameters = [] }) =>
    code(`${isStatic ? `${className}.` : ''}${name}(${parameters.map((each) => each.name).join(', ')})`);
  return [
    `### \`${tagName}\``,
    description,
    table('attribute', attributes, typed),
    table('property', fields, typed),
    table('method', methods, { name: signature, ...meaning }),
    table('event', events, typed),
    table('slot', rest.slots ?? [], named),
    table('part', rest.cssParts ?? [], named),
    table('custom property', rest.cssProperties ?? [], named),
  ].join('\n\n');
}

/** A text in Markdown with the tables of every element, from the built manifest, between its two markers. */
export function withTables(text) {
  if (!markers.test(text)) throw new Error('There is no <!-- tables --> … <!-- end of tables -->.');
  const { modules } = JSON.parse(readFileSync('dist/custom-elements.json', 'utf8'));
  const tables = modules.flatMap(({ declarations }) => declarations.map(section)).join('\n\n');
  const whole = text.replace(markers, (_, open, end) => `${open}\n\n${tables}\n\n${end}`);
  return format(whole, { parser: 'markdown' });
}
