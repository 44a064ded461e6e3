import { all, any, asked, is, not } from '../../core/condition.ts';

/** A motor on electronics that we fit. */
export const newMotor = is(
  'spindle-motor',
  'three-phase-drive',
  'doubler-drive',
  'brushless-kit',
  'servo-spindle',
);
/** What turns the spindle is told by the program, not by a switch on the lathe. */
export const byProgram = not(is('control', 'thread-synchroniser'));
/** Hand work goes on: the factory speed board keeps its knob and switch, and nothing is wired into it. */
export const knobStaysInHand = all(
  is('control', 'thread-synchroniser'),
  is('spindle-motor', 'keep-speed-knob'),
);
/** Controls of which many read one mark a turn while threading, whatever the sensor sends. */
export const oftenOneMark = is('control', 'desktop-with-controller', 'small-board');
export const phaseMotor = is('spindle-motor', 'three-phase-drive', 'doubler-drive');
export const anySensor = all(asked('spindle-sensor'), not(is('spindle-sensor', 'no-sensor')));
export const lineEncoder = is('spindle-sensor', 'encoder-100-200', 'encoder-1000-up');
export const cutsThreads = is(
  'thread-kinds',
  'metric-threads',
  'inch-threads',
  'left-hand-threads',
  'internal-threads',
  'multi-start-threads',
);
/** Controls that count single-ended signals; judgement: read the manual. */
export const singleEnded = is(
  'control',
  'parallel-port-pc',
  'two-parallel-ports-pc',
  'small-board',
  'thread-synchroniser',
);
export const looseNose = any(is('spindle-nose', 'screwed-nose'), is('spindle-nose', 'nose-not-known'));
