export { isBoard, type BoardFace } from './board-face.ts';
export { BoardLink, type LinkHost } from './board-link.ts';
export { changeOfQuantity, changeOfSwitch, changesOf } from './change.ts';
export type { ChangeStyle, ChangeText, Comparison, StepReader } from './comparison.ts';
export {
  fire,
  type AnswerDetail,
  type ChangeDetail,
  type ClaimDetail,
  type ProblemDetail,
  type RecordDetail,
  type RevealDetail,
} from './events.ts';
export { boardTag } from './find-board.ts';
export { once } from './once.ts';
export {
  figuresOf,
  isHidden,
  isQuantity,
  prefixFor,
  prefixIn,
  readingOf,
  unitOf,
  type ReadingStyle,
  type ReadingText,
} from './reading.ts';
export { asRead, calledQuantity, inLetters, partsOf } from './quantity-name.ts';
export { shortcutOf } from './shortcut.ts';
export type { Settings, Snapshot } from './snapshot.ts';
export { spokenQuantity } from './spoken.ts';
