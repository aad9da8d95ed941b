import { register } from '../page/index.ts';
import { RheoletClaim } from './claim.ts';

register('rheolet-claim', RheoletClaim);
