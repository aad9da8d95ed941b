export { agreement } from './agreement.ts';
