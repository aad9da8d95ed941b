export { bridges } from './bridges.ts';
export { isContact } from './changeover.ts';
export { checkRange } from './check-range.ts';
export { circuitFrom, componentLimit } from './circuit-from.ts';
export { circuitToJSON, type CircuitJSON, type ComponentJSON } from './circuit-to-json.ts';
export type { FormatData, JsonData, TwinData } from './codes.ts';
export { conditions, isCondition } from './condition.ts';
export { actualResistance, asMarked, faultIn, hasFault, withFault } from './fault.ts';
export { CircuitFormatError } from './format-error.ts';
export type {
  Circuit,
  Component,
  Condition,
  CurrentSource,
  Kind,
  Diode,
  Fuse,
  Lamp,
  Load,
  Meter,
  Range,
  Resistor,
  Sensor,
  Supply,
  SupplyForm,
  Surroundings,
  Switch,
  Track,
  Wire,
} from './model.ts';
export { hasCurve, type Curved } from './has-curve.ts';
export { isMeter } from './is-meter.ts';
export { inState, type State } from './in-state.ts';
export { isOwn } from './is-own.ts';
export { isResistor } from './is-resistor.ts';
export { isSettable } from './is-settable.ts';
export { isSupply } from './is-supply.ts';
export { isSwitch } from './is-switch.ts';
export { inLatin } from './in-latin.ts';
export { nearest } from './nearest.ts';
export { isPoint } from './point.ts';
export { defaultStep, lastSetting, nearestSetting, settingAt } from './range.ts';
export { endsOfTrack, isTrack, trackParts, wholesIn } from './potentiometer.ts';
export { forwardPoint, ratedResistance } from './ratings.ts';
export { resistanceOf } from './resistance.ts';
export { usualSurroundings } from './sensor.ts';
export { settingOf } from './setting.ts';
export { formOf, inForm, isCounted, supplyForms } from './supply-form.ts';
export { sourceRange, supplyRanges } from './supply-ranges.ts';
export {
  checkSurrounding,
  feltBy,
  isSurrounding,
  surroundingNames,
  surroundingOf,
  surroundingRanges,
  surroundingsSince,
  type Surrounding,
} from './surroundings.ts';
export { twinOf } from './twin-of.ts';
export { isSecondTwin, matched, wrongTwins } from './twins.ts';
export { positions, withValue, type Setting } from './with-value.ts';
