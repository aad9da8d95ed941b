export {
  equipForks,
  equipQuantities,
  equipWipers,
  type ForkDrawer,
  type QuantityDrawer,
  type WiperDrawer,
} from './block.ts';
export { valueText } from './caption.ts';
export type { DescriptionData, PartName, Phrase } from './codes.ts';
export { describeCircuit } from './describe.ts';
export { drawSchematic, equipWebs, schematicSize, type WebDrawer } from './draw.ts';
export type { Size } from './plan.ts';
export type {
  Arrow,
  Box,
  Drawing,
  DrawingStyle,
  NodeWires,
  PlacedLabel,
  PlacedMark,
  PlacedSymbol,
  Point,
  QuantityArrow,
  RibbonRun,
  Share,
  Turn,
  WrittenQuantity,
} from './drawing.ts';
export { levelPlan, type LevelLine, type LevelPlan } from './levels.ts';
export { terminalRadius } from './network.ts';
export { dotsOf, lineOf } from './path.ts';
export { prepareRibbons, type Ribbons } from './ribbons.ts';
export { labelParts, subscript, textSize } from './text.ts';
