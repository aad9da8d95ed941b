/** What an event of the library says: which board, which component, and the quantity that changed with its new value. */
export interface ChangeDetail {
  /** The id of the board, '' if it has none. */
  readonly board: string;
  /** The component's label; `temperature`, `light`; of a voltmeter's leads that were moved, what they read (`V_X_Z`). */
  readonly id: string;
  /** `R_R1`, `E_B1`, `r_B1`, `V_X_Z`, `temperature`, `light`; '' for a switch, and for what is broken, bridged or intact. */
  readonly quantity: string;
  /** In SI units, a temperature in °C; a switch is 1 when closed, 0 when open; what is broken or bridged is 1, intact 0; not a number where moved leads read nothing. */
  readonly value: number;
  /** As it is written: "20 Ω", "5 °C", "closed", "broken". */
  readonly text: string;
  /** `Ω`, `V`, `°C`, `lx`; '' where `quantity` is. */
  readonly unit: string;
}

/** What went wrong, as a code and as a sentence. */
export interface ProblemDetail {
  /** The id of the board, '' if it has none. */
  readonly board: string;
  /** What the element was asked to show, '' if nothing. */
  readonly id: string;
  readonly code: string;
  readonly text: string;
}

/** What a pupil has recorded in a table. */
export interface RecordDetail {
  /** The id of the board, '' if it has none. */
  readonly board: string;
  /** The values of each row in SI units, by the names of the quantities. */
  readonly records: readonly Readonly<Record<string, number>>[];
}

/** What a pupil has tested, and what was found out. */
export interface ClaimDetail {
  /** The id of the board, '' if it has none. */
  readonly board: string;
  /** The statement as it stands in the box. */
  readonly claim: string;
  readonly verdict: 'always' | 'never' | 'sometimes' | 'not understood';
  /** Whether the verdict is certain for all settings. */
  readonly proved: boolean;
}

/** How far a pupil has uncovered a worked solution. */
export interface RevealDetail {
  /** The id of the board, '' if it has none. */
  readonly board: string;
  /** What is worked out. */
  readonly of: string;
  /** Whole steps that are uncovered, of so many. */
  readonly shown: number;
  readonly steps: number;
}

/** A number that a pupil has filled in. */
export interface AnswerDetail {
  /** The id of the board, '' if it has none. */
  readonly board: string;
  /** What was to be found, and its value in SI units. */
  readonly quantity: string;
  readonly value: number;
  /** What was filled in. */
  readonly text: string;
  readonly right: boolean;
}

interface Details {
  /** A control is moving. */
  'rheolet-input': ChangeDetail;
  /** A control has settled. */
  'rheolet-change': ChangeDetail;
  /** The readings were held or let go. */
  'rheolet-hold': { readonly board: string; readonly held: boolean };
  /** A row was recorded, taken away or brought back: all rows there are now. */
  'rheolet-record': RecordDetail;
  /** A statement was tested. */
  'rheolet-claim': ClaimDetail;
  /** A step of a worked solution was uncovered, or covered again. */
  'rheolet-reveal': RevealDetail;
  /** A number was filled in. */
  'rheolet-answer': AnswerDetail;
  /** Something in the page cannot be shown. */
  'rheolet-problem': ProblemDetail;
}

/** Fires one of the library's events: bubbling, and out of shadow roots. */
export function fire<Name extends keyof Details>(from: EventTarget, name: Name, detail: Details[Name]): void {
  from.dispatchEvent(new CustomEvent(name, { detail, bubbles: true, composed: true }));
}

declare global {
  interface GlobalEventHandlersEventMap {
    'rheolet-input': CustomEvent<Details['rheolet-input']>;
    'rheolet-change': CustomEvent<Details['rheolet-change']>;
    'rheolet-hold': CustomEvent<Details['rheolet-hold']>;
    'rheolet-record': CustomEvent<Details['rheolet-record']>;
    'rheolet-claim': CustomEvent<Details['rheolet-claim']>;
    'rheolet-reveal': CustomEvent<Details['rheolet-reveal']>;
    'rheolet-answer': CustomEvent<Details['rheolet-answer']>;
    'rheolet-problem': CustomEvent<Details['rheolet-problem']>;
  }
}
