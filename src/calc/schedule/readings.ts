import { compile, type State } from '../choices/state.ts';
import type { Reading } from '../core/reading.ts';
import { readings as approach } from '../subsystems/approach/readings.ts';
import { readings as carriage } from '../subsystems/carriage/readings.ts';
import { readings as crossSlide } from '../subsystems/cross-slide/readings.ts';
import { readings as motors } from '../subsystems/motors/readings.ts';
import { readings as purpose } from '../subsystems/purpose/readings.ts';
import { readings as spindle } from '../subsystems/spindle/readings.ts';
import { readings as tooling } from '../subsystems/tooling/readings.ts';
import { readings as wiring } from '../subsystems/wiring/readings.ts';

/** Everything that is measured and written down, from the rooms. No entrance that every page loads leads here. */
export const readings: readonly Reading[] = [
  ...purpose,
  ...approach,
  ...carriage,
  ...crossSlide,
  ...tooling,
  ...motors,
  ...spindle,
  ...wiring,
];

export const readingById: ReadonlyMap<string, Reading> = new Map(readings.map((each) => [each.id, each]));

const compiled = readings.map((reading) => ({
  reading,
  when: compile(reading.when ?? { kind: 'always' }),
}));

/** What is measured on this path, in the order of the rooms. */
export const readingsOf = (state: State, inPlan: ReadonlySet<string>): Reading[] =>
  compiled
    .filter(({ reading, when }) => inPlan.has(reading.task) && when(state))
    .map(({ reading }) => reading);
