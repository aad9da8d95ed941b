import { exponentOf, numberText, powerOfTen, type Quantity } from '../quantity/index.ts';

/** A number as the canonical form writes it, without its unit: `4.7` of 4.7 kΩ. */
export function bareText({ value, prefix, decimals }: Quantity): string {
  return numberText(value.mul(powerOfTen(-exponentOf(prefix))), decimals);
}

/** A quantity as the canonical form writes it: `4.7 kΩ`, `12.0 V`, `1/3 Ω`. */
export function quantityText(quantity: Quantity): string {
  return `${bareText(quantity)} ${quantity.prefix}${quantity.unit}`;
}
