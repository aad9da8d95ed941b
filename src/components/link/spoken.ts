import { say, writeQuantity, type Quantity } from '../../engine/core.ts';

/** A value as written, to be heard: "4.7 kiloohms". */
export function spokenQuantity(quantity: Quantity): string {
  const { unit } = quantity;
  const prefix = quantity.decimals === undefined ? '' : quantity.prefix;
  return say({ code: 'spoken', data: { number: writeQuantity(quantity).number, prefix, unit } });
}
