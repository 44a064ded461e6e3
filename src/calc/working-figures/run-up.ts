import { threadFeed, threadRunUp } from '../formulas/thread.ts';
import { curveOf, mm, perMinute, rpm, type Values, type WorkingFigure } from './figure.ts';

const SPEED = { low: 50, high: 2000 };
/** Spare pitches in which carriage and spindle fall into step; common practice. */
const SPARE = 2;

function answer({ pitch = 0, speed = 0, acceleration = 1 }: Values) {
  const roomAt = (each: number) =>
    threadRunUp.compute({ pitch, speed: each, acceleration, sparePitches: SPARE });
  const room = roomAt(speed);
  return {
    say: 'Start the tool at least {room} in front of the work: the carriage must then run at {feed}.',
    rows: [
      {
        id: 'feed',
        label: 'Carriage speed',
        value: threadFeed.compute({ pitch, speed }),
        written: perMinute,
      },
      { id: 'spare', label: 'Two spare pitches', value: SPARE * pitch, written: mm },
      { id: 'room', label: 'Run-up', value: room, written: mm },
    ],
    curves: [{ name: 'run-up', points: curveOf(SPEED.low / 60, SPEED.high / 60, roomAt) }],
    mark: [speed, room],
  } as const;
}

/** Room in front of a thread until the carriage keeps pace with the spindle. */
export const runUp: WorkingFigure = {
  id: 'run-up',
  topic: 'spindle-feedback',
  question: 'How far in front of a thread must the tool start?',
  begin: 'Set the thread, and see what a faster spindle asks for.',
  inputs: [
    {
      id: 'pitch',
      label: 'Pitch',
      unit: 'm',
      written: mm,
      low: 0.25,
      high: 6,
      step: 0.25,
      example: 1.5,
      own: 'coarsest-thread',
    },
    {
      id: 'speed',
      label: 'Spindle speed while threading',
      unit: 'rev/s',
      written: rpm,
      ...SPEED,
      step: 10,
      example: 400,
      own: 'thread-spindle-speed',
    },
    {
      id: 'acceleration',
      label: 'Acceleration of the carriage',
      unit: 'm/s²',
      written: { unit: 'mm/s²', per: 1000 },
      low: 50,
      high: 2000,
      step: 10,
      example: 200,
      own: 'slide-acceleration',
    },
  ],
  across: { label: 'spindle speed, rpm', written: rpm },
  up: { label: 'run-up, mm', written: mm },
  formulas: [threadRunUp.id, threadFeed.id],
  answer,
};
