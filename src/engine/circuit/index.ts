export type { FormatData } from './codes.ts';
export type { Circuit, Component, Kind, Lamp, Meter, Range, Resistor, Supply, Switch, Wire } from './model.ts';
