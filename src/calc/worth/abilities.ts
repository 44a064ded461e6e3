import { compile, type State } from '../choices/state.ts';
import type { Ability, AbilityRow } from '../core/alternative.ts';
import { any, is, isNot } from '../core/condition.ts';
import { taskHours } from '../schedule/work.ts';

const oneSlide = compile(is('driven-axes', 'carriage-only', 'cross-slide-only'));
const withoutCarriage = compile(is('driven-axes', 'cross-slide-only'));
const noPrograms = compile(is('control', 'thread-synchroniser'));
const spindleRead = compile(isNot('spindle-sensor', 'no-sensor'));
const boltsOff = compile(is('hand-use', 'fully-reversible'));
const wheels = compile(is('hand-use', 'electronic-handwheels'));
const cranks = compile(any(is('hand-use', 'hand-cranks', 'fully-reversible')));

const able = (can: Ability['can'], say: string): Ability => ({ can, say });

function threads(state: State): Ability {
  if (withoutCarriage(state)) return able('no', 'The carriage has no motor to follow the spindle.');
  return spindleRead(state)
    ? able('yes', 'Any pitch.')
    : able('no', 'Without a sensor on the spindle there are none.');
}

function profiles(state: State): Ability {
  if (oneSlide(state)) return able('no', 'One slide is moved by hand.');
  return noPrograms(state)
    ? able('partly', 'Tapers; balls on some controls.')
    : able('yes', 'Curves, balls, tapers.');
}

function batches(state: State): Ability {
  if (oneSlide(state) || noPrograms(state)) return able('partly', 'Lengths repeat, the rest by hand.');
  return able('yes', 'One program, tools that come back to their place.');
}

function handUse(state: State): Ability {
  if (cranks(state)) return able('yes', 'Cranks or handwheels stay.');
  return wheels(state) ? able('partly', 'By electronic handwheels.') : able('no', 'By buttons only.');
}

function reversible(state: State): Ability {
  const final = taskHours(state).filter(({ task }) => task.undo === 'cannot-be-undone').length;
  if (final === 0)
    return able('yes', boltsOff(state) ? 'Everything bolts off again.' : 'Nothing is cut for good.');
  return able('no', 'Castings or screws are cut for good.');
}

/** What the conversion as planned can do, in the rows of the alternatives. */
export const abilitiesOf = (state: State): Record<AbilityRow, Ability> => ({
  threads: threads(state),
  profiles: profiles(state),
  batches: batches(state),
  handUse: handUse(state),
  reversible: reversible(state),
});
