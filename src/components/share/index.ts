export { Sharing, type Shareable } from './sharing.ts';
