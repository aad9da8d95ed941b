export type { Box, Drawing, DrawingStyle, NodeWires, PlacedLabel, PlacedSymbol, Point, RibbonRun } from './drawing.ts';
