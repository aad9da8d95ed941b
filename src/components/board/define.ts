import '../resistor/define.ts';
import { register } from '../page/index.ts';
import { RheoletBoard } from './board.ts';

register('rheolet-board', RheoletBoard);

declare global {
  interface HTMLElementTagNameMap {
    'rheolet-board': RheoletBoard;
  }
}
