export { copy } from './clipboard.ts';
export { cancelFrame, inTurn, nextFrame, type FrameTask } from './frame.ts';
export { buttons } from './buttons.ts';
export { ink } from './ink.ts';
export { later } from './later.ts';
export { register } from './register.ts';
export { Room } from './room.ts';
export { version } from './version.ts';
export { speak } from './voice.ts';
