import { register } from '../page/index.ts';
import { RheoletSteps } from './steps.ts';

register('rheolet-steps', RheoletSteps);
