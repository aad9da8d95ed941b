import { register } from '../page/index.ts';
import { RheoletResistor } from './resistor.ts';

register('rheolet-resistor', RheoletResistor);

declare global {
  interface HTMLElementTagNameMap {
    'rheolet-resistor': RheoletResistor;
  }
}
