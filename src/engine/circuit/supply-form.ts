import type { Supply, SupplyForm } from './model.ts';

/** The words for what a supply may be. */
export const supplyForms: readonly SupplyForm[] = ['cell', 'battery', 'supply'];

/** What a supply is: as stated; else a battery where its cells are counted, or its e.m.f. goes beyond 2 V either way (common practice). */
export function formOf({ form, cells, range, emf }: Supply): SupplyForm {
  if (form) return form;
  const isOne =
    cells === undefined
      ? (range ? [range.min, range.max] : [emf]).every(({ value }) => Math.abs(Number(value)) <= 2)
      : cells === 1;
  return isOne ? 'cell' : 'battery';
}

/** The same supply as a cell, a battery or d.c. terminals: stated only where it is not understood. */
export function inForm(supply: Supply, form: SupplyForm | undefined): Supply {
  const { form: before, ...plain } = supply;
  if (form && form !== formOf(plain)) return { ...supply, form };
  return before ? plain : supply;
}

/** Whether a supply that is said to be of a form may have the number of cells that it has. */
export const isCounted = (supply: Supply, form: SupplyForm | undefined): boolean =>
  !form || !supply.cells || form === 'battery' || form === formOf(supply);
