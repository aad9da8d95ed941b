import { relation, term, type Relation } from './relation.ts';

/** Energy and charge in a time, of the components of which they are given or asked. */
export function inTime(named: readonly string[]): readonly Relation[] {
  const ids = new Set(named.flatMap((name) => (/^[WQ]_/.test(name) ? [name.slice(2)] : [])));
  return [...ids].flatMap((id) => [
    relation('energy and time', 'product', [id], `W_${id}`, term(`P_${id}`), term('t')),
    relation('charge and time', 'product', [id], `Q_${id}`, term(`I_${id}`), term('t')),
    relation('energy and charge', 'product', [id], `W_${id}`, term(`V_${id}`), term(`Q_${id}`)),
  ]);
}
