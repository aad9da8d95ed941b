import { watch } from './loader.ts';

watch(globalThis.document); // in Node there is none

export { watch };
