import { readFileSync } from 'node:fs';

/** The elements that are shipped, by the last part of their tags. */
export const names = Object.keys(JSON.parse(readFileSync('package.json', 'utf8')).exports).flatMap(
  (name) => /^\.\/(\w+)\.js$/.exec(name)?.[1] ?? [],
);

const of = {
  meter: 'A1',
  resistor: 'R1',
  value: 'I_A1',
  steps: 'I_A1',
  supply: 'B1',
  surroundings: 'light',
  switch: 'S1',
};
const against = { graph: 'R1' };
const attribute = (name, value) => (value ? ` ${name}="${value}"` : '');
const element = (name) =>
  `<rheolet-${name} board="quay"${attribute('of', of[name])}${attribute('against', against[name])}></rheolet-${name}>`;

/** The circuit of the lesson: A1 reads 1.25 A. */
export const line = 'B1 6 V + S1 closed + A1 + (R1 [4..40] 12 Ω ∥ L1 8 Ω ∥ LDR1 800 kΩ)';

/** A board and every other element that is shipped, reading it. */
export const lesson = `<rheolet-board id="quay" circuit="${line}">A lamp beside a control.</rheolet-board>
${names
  .filter((name) => name !== 'board')
  .map(element)
  .join('\n')}`;

/** A page kept in this folder, with the lesson and scripts where it has places for them. */
export function kept(name, { scripts = '', content = lesson } = {}) {
  return readFileSync(`tests/hosts/pages/${name}.html`, 'utf8')
    .replace('<!-- scripts -->', () => scripts)
    .replace('<!-- lesson -->', () => content);
}

/** Script tags for files of dist, classic or module. */
export const scripts = (...files) =>
  files
    .map(
      (file) => `<script ${file.includes('.min.') ? 'defer' : 'type="module"'} src="/dist/${file}"></script>`,
    )
    .join('\n');
