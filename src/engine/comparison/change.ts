import type { Fraction } from '../quantity/index.ts';

/** A value, exact or not. */
export type Measured = Fraction | number;

/** What a value has done since it was held. */
export interface Change {
  readonly direction: 'rose' | 'fell' | 'same';
  /** How far it is from where it was, without a sign. */
  readonly by: Measured;
  /** How many times what it was; absent where that was 0, or of the other sign. */
  readonly ratio?: Measured;
  /** Whether it has the other sign now. */
  readonly turned: boolean;
}

/** How a value is compared. */
export interface Comparing {
  /** Whether −2 is less than 1, and not twice as much the other way. */
  readonly signed?: boolean;
  /** What is read of a value, by an instrument that tells steps apart: `by` and `ratio` are of these readings, `direction` is not. */
  readonly read?: ((value: Measured) => Measured) | undefined;
}

/** What decimals may miss by of the larger of two values: they agree to nine figures, or they differ. */
const noise = 1e-9;

const sizeOf = (value: Measured): Measured => (typeof value === 'number' ? Math.abs(value) : value.abs());

/** The difference of two values and its sign; fractions tell apart whatever differs, decimals what differs by more than noise. */
function difference(was: Measured, is: Measured): { readonly sign: number; readonly by: Measured } {
  if (typeof was !== 'number' && typeof is !== 'number') {
    const by = is.sub(was);
    return { sign: by.compare(0), by: by.abs() };
  }
  const [from, to] = [Number(was), Number(is)];
  const by = to - from;
  const same = Math.abs(by) <= noise * Math.max(Math.abs(from), Math.abs(to));
  return same ? { sign: 0, by: 0 } : { sign: Math.sign(by), by: Math.abs(by) };
}

function quotient(was: Measured, is: Measured): Measured | undefined {
  if (Number(was) === 0) return undefined;
  return typeof was === 'number' || typeof is === 'number' ? Number(is) / Number(was) : is.div(was);
}

/** What a value has done: whether it is the same is decided by the values themselves, whatever is written of them. */
export function changeFrom(was: Measured, is: Measured, { signed = false, read }: Comparing = {}): Change {
  const turned = Number(was) * Number(is) < 0;
  const shown = (value: Measured): Measured => (signed ? value : sizeOf(value));
  const { sign, by } = difference(shown(was), shown(is));
  const seen = (value: Measured): Measured => shown(read?.(value) ?? value);
  const ratio = turned && signed ? undefined : quotient(seen(was), seen(is));
  return {
    direction: sign === 0 ? 'same' : sign > 0 ? 'rose' : 'fell',
    by: read ? difference(seen(was), seen(is)).by : by,
    ...(ratio !== undefined && { ratio }),
    turned,
  };
}
