import { register } from '../page/index.ts';
import { RheoletSurroundings } from './surroundings.ts';

register('rheolet-surroundings', RheoletSurroundings);

declare global {
  interface HTMLElementTagNameMap {
    'rheolet-surroundings': RheoletSurroundings;
  }
}
