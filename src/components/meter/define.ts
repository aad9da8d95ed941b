import { register } from '../page/index.ts';
import { RheoletMeter } from './meter.ts';

register('rheolet-meter', RheoletMeter);
