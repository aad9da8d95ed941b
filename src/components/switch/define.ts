import { register } from '../page/index.ts';
import { RheoletSwitch } from './switch.ts';

register('rheolet-switch', RheoletSwitch);

declare global {
  interface HTMLElementTagNameMap {
    'rheolet-switch': RheoletSwitch;
  }
}
