import { register } from '../page/index.ts';
import { RheoletLevels } from './levels.ts';

register('rheolet-levels', RheoletLevels);
