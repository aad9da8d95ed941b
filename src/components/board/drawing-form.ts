import { valueText, type Circuit } from '../../engine/core.ts';

const textOf = (value: unknown): string =>
  typeof value === 'object' && value !== null ? Object.values(value).map(textOf).join(' ') : String(value);

/** What decides the size of a circuit's drawing: of a resistance only how it is written, since all digits are equally wide. */
export function formOfDrawing({ components, zero, terminals }: Circuit): string {
  const parts = components.map((component) => {
    const others = Object.entries(component).map(
      ([name, value]) => name === 'resistance' || `${name} ${textOf(value)}`,
    );
    return `${others.join()} ${'resistance' in component ? valueText(component).replace(/\d/g, '0') : ''}`;
  });
  return [zero, textOf(terminals), ...parts].join('\n');
}
