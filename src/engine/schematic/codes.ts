import type { Condition } from '../circuit/index.ts';

/** What a component is called in words. */
export type PartName =
  | 'cell'
  | 'battery'
  | 'd.c. supply'
  | 'variable supply'
  | 'constant-current supply'
  | 'variable constant-current supply'
  | 'resistor'
  | 'variable resistor'
  | 'potentiometer part'
  | 'lamp'
  | 'filament lamp'
  | 'heater'
  | 'motor'
  | 'diode'
  | 'light-emitting diode'
  | 'thermistor'
  | 'light-dependent resistor'
  | 'fuse'
  | 'blown fuse'
  | 'open push switch'
  | 'closed push switch'
  | 'open changeover contact'
  | 'closed changeover contact'
  | 'open switch'
  | 'closed switch'
  | 'ammeter'
  | 'voltmeter'
  | 'wire';

/** A part of a chain in words, and the numbers of the branches that join after it. */
export interface Phrase {
  readonly text: string;
  readonly join: readonly string[];
}

/** The diagram in words. Texts are phrases that have been made already. */
export interface DescriptionData {
  /** A component: its values as written, and the two ends of its range, and of that of its internal resistance. */
  readonly part: {
    readonly name: PartName;
    readonly id: string;
    readonly values: readonly string[];
    /** Its internal resistance, '' if none. */
    readonly internal: string;
    readonly range: readonly string[];
    readonly internalRange: readonly string[];
    /**
     * A supply that drives against the first one, or a diode that does not conduct the way it is told; of a supply that the way round the first
     * one does not lead through, which terminal is told first.
     */
    readonly way: '' | 'turned round' | 'positive first' | 'positive last';
    readonly condition: Condition | undefined;
  };
  /** Parts one after another. */
  readonly chain: { readonly parts: readonly Phrase[] };
  /** Parallel branches, each with its number (2.1 is the first branch within the second), and the voltmeters across them. */
  readonly branches: {
    readonly meters: readonly string[];
    readonly branches: readonly { readonly number: string; readonly text: string }[];
  };
  /** Something with voltmeters across it; the ids of its components if they are several. */
  readonly across: {
    readonly text: string;
    readonly meters: readonly string[];
    readonly several: readonly string[];
  };
  readonly loop: { readonly supply: string; readonly id: string; readonly parts: readonly Phrase[] };
  readonly network: { readonly text: string };
  /** Two branches whose middles something joins. */
  readonly 'joined branches': {
    readonly across: string;
    readonly branches: readonly { readonly number: string; readonly text: string }[];
  };
  /**
   * What is not series and parallel all the way down: its parts between numbered junctions; a text is '' where the two are the
   * terminals of a network. `back`: it leads back to where it began.
   */
  readonly web: {
    readonly parts: readonly {
      readonly text: string;
      readonly from: number;
      readonly to: number;
      readonly back: boolean;
    }[];
  };
  /** The labelled points, each with the components that meet there. */
  readonly points: { readonly points: readonly { readonly name: string; readonly ids: readonly string[] }[] };
  /** The components at the node of the 0 V mark. */
  readonly 'zero mark': { readonly ids: readonly string[] };
  /** Whole sentences, one for each piece that does not hang together with the others. */
  readonly pieces: { readonly texts: readonly string[] };
}
