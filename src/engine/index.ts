import { equipEquations } from './explain/index.ts';
import { kirchhoff } from './explain/kirchhoff/index.ts';
import { curves } from './nonlinear/index.ts';
import { drawForks } from './schematic/fork/index.ts';
import { equipForks, equipWebs } from './schematic/index.ts';
import { drawWeb } from './schematic/web/index.ts';
import { equip, equipLarge } from './solve/index.ts';
import { sparseFlow } from './sparse/index.ts';

export * from './core.ts';
export { en, say, type Catalogue, type Language, type Said } from './reasons/index.ts';
export * from './claims/index.ts';
export * from './comparison/index.ts';
export * from './explain/index.ts';
export { kirchhoff } from './explain/kirchhoff/index.ts';
export * from './mark/index.ts';
export * from './reduction/index.ts';
export * from './picture/index.ts';
export * from './time/index.ts';
export * from './nonlinear/index.ts';
export * from './whatif/index.ts';
export { drawForks } from './schematic/fork/index.ts';
export { drawWeb } from './schematic/web/index.ts';

equip(curves);
equipForks(drawForks);
equipLarge(sparseFlow);
equipWebs(drawWeb);
equipEquations(kirchhoff);
