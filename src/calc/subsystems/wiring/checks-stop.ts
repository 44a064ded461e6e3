import { atLeastLimit, atMost, type Check, type CheckRule } from '../../core/check.ts';
import type { Look } from '../../core/figure.ts';
import { assumed, chosen, type Quantity } from '../../core/quantity.ts';
import { expectedSpread, type HomedSlide, homeSpread } from './homing.ts';
import { stopTable } from './stop-table.ts';

/** Channels that take the power away with no computer in between. */
const channels: Readonly<Record<string, number>> = {
  'tells-computer-only': 0,
  'cuts-power': 1,
  'cuts-power-watched': 2,
};

const grade: CheckRule = (look) => {
  const circuit = look.option('stop-circuit') ?? '';
  const count = channels[circuit];
  if (count === undefined) return undefined;
  const watched = look.chosen('work-holding', 'power-chuck');
  return atLeastLimit({
    id: 'stop-grade',
    harm: true,
    label: 'Ways the red button cuts power without the computer',
    value: chosen(count, '1', 'stop-circuit', circuit, 'channels from the button to the contactors'),
    limit: assumed(
      watched ? 2 : 1,
      '1',
      watched
        ? 'a chuck that lets go by itself wants two'
        : 'a stop that depends on software is no stop circuit',
    ),
    remedy:
      'A button that only tells the computer is never a finished stop circuit. Wire it so that power goes even when the control has crashed.',
    testWhen: 'With the control unplugged: press the button and measure that the drives are dead.',
    decisions: ['stop-circuit', 'work-holding'],
  });
};

const watch: Readonly<Record<string, number>> = {
  'no-watchdog': 0,
  'heartbeat-relay': 1,
  'drive-enable-chain': 1,
};

const watchdog: CheckRule = (look) => {
  const option = look.option('watchdog') ?? '';
  const count = watch[option];
  if (count === undefined) return undefined;
  return atLeastLimit({
    id: 'watchdog',
    harm: true,
    label: 'Something outside the computer that drops the drives',
    value: chosen(count, '1', 'watchdog', option, 'what notices that the computer has stopped'),
    limit: assumed(1, '1', 'a frozen computer leaves its outputs as they were'),
    remedy: 'Fit a relay that holds only while pulses come, or wire the enable chain of the card.',
    testWhen: 'Crash the program on purpose while a slow move runs: spindle and drives let go.',
    decisions: ['watchdog', 'control'],
  });
};

/** Filled on paper and proved with lamps; nothing but the test can say that it is right. */
const table: CheckRule = (look) => {
  const rows = stopTable(look);
  return atLeastLimit({
    id: 'stop-table',
    harm: true,
    label: 'Lines of the stop table that have been proved',
    value: look.measured('stop-rows-proved'),
    needs: look.measured('stop-rows-proved') ? [] : ['stop-rows-proved'],
    limit: assumed(rows.length, '1', rows.map(({ event }) => event).join('; ')),
    remedy:
      'Go through the table line by line with lamps in place of motors, and once more on the lathe. Tick each line.',
    testWhen:
      'When the cabinet is fitted out: with the control running, crashed and unplugged. Again once the wiring of the machine is done.',
    decisions: ['stop-circuit', 'spindle-stop', 'chuck-guard', 'watchdog'],
  });
};

const homes = (look: Look, slide: HomedSlide): Quantity | undefined => {
  const option = look.option('home-limits');
  const expected = expectedSpread(option, slide);
  if (option === undefined || expected === undefined) return undefined;
  return (
    look.measured(`${slide}-home-spread`) ?? chosen(expected.metres, 'm', 'home-limits', option, expected.why)
  );
};

const eachTime =
  'Without switches every tool is touched off again after each switch-on. Home switches keep the offsets.';

/** Without switches there is nothing to fail, only more to do by hand: a look, never a stop. */
function homeCheck(look: Look, slide: HomedSlide, draft: Pick<Check, 'label' | 'remedy'>) {
  const value = homes(look, slide);
  if (value === undefined || look.chosen('control', 'thread-synchroniser')) return undefined;
  const none = look.chosen('home-limits', 'no-homing');
  const check = atMost({
    id: `${slide}-homing`,
    label: draft.label,
    value,
    limit: assumed(homeSpread[slide], 'm', 'common practice, no source'),
    comfort: slide === 'cross' ? 1.5 : 1,
    remedy: none ? eachTime : draft.remedy,
    testWhen: 'When the slides find their place: ten times warm and ten times cold, indicator on the slide.',
    decisions: ['home-limits'],
  });
  return none && check.result === 'stop' ? { ...check, result: 'look' as const } : check;
}

const crossHome: CheckRule = (look) =>
  look.chosen('driven-axes', 'carriage-only')
    ? undefined
    : homeCheck(look, 'cross', {
        label: 'Spread of ten homings of the cross slide (twice that on diameter)',
        remedy:
          'Use a precision switch, or the switch and the mark of the motor. A plain inductive sensor drifts 0.02 to 0.05 mm over a day.',
      });

const carriageHome: CheckRule = (look) =>
  look.chosen('driven-axes', 'cross-slide-only')
    ? undefined
    : homeCheck(look, 'carriage', {
        label: 'Spread of ten homings of the carriage',
        remedy:
          'Move the sensor away from chips and heat and home again once the lathe is warm, or fit a precision switch.',
      });

export const stopChecks: readonly CheckRule[] = [grade, watchdog, table, crossHome, carriageHome];
