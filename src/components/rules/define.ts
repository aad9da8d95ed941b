import { register } from '../page/index.ts';
import { RheoletRules } from './rules.ts';

register('rheolet-rules', RheoletRules);
