import { register } from '../page/index.ts';
import { RheoletActivity } from './activity.ts';

register('rheolet-activity', RheoletActivity);
