import { exactText, Fraction, valueText, type Circuit } from '../../engine/core.ts';
import { isQuantity } from '../link/index.ts';

function textOf(value: unknown): string {
  if (value instanceof Fraction) return exactText(value);
  if (isQuantity(value))
    return `${exactText(value.value)} ${value.prefix}${value.unit} ${value.decimals ?? ''}`;
  return typeof value === 'object' && value !== null
    ? Object.values(value).map(textOf).join(' ')
    : String(value);
}

/** What decides the size of a circuit's drawing: of a resistance only how it is written, since all digits are equally wide. */
export function formOfDrawing({ components, zero, terminals }: Circuit): string {
  const parts = components.map((component) => {
    const others = Object.entries(component).map(
      ([name, value]) => name === 'resistance' || `${name} ${textOf(value)}`,
    );
    return `${others.join()} ${valueText(component).replace(/\d/g, '0')}`;
  });
  return [zero, textOf(terminals), ...parts].join('\n');
}
