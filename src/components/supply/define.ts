import { register } from '../page/index.ts';
import { RheoletSupply } from './supply.ts';

register('rheolet-supply', RheoletSupply);

declare global {
  interface HTMLElementTagNameMap {
    'rheolet-supply': RheoletSupply;
  }
}
