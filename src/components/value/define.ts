import { register } from '../page/index.ts';
import { RheoletValue } from './value.ts';

register('rheolet-value', RheoletValue);

declare global {
  interface HTMLElementTagNameMap {
    'rheolet-value': RheoletValue;
  }
}
