import type { Look } from '../core/figure.ts';
import { assumed, type Quantity } from '../core/quantity.ts';
import { productOf, smallestOf } from '../core/steps.ts';
import { blank, planned, type Setting, worked } from './setting.ts';

const practice = 'common practice, no source';

function sensor(look: Look): Setting[] {
  const lines = look.figure('sensor-lines');
  if (lines === undefined || look.chosen('spindle-sensor', 'no-sensor')) return [];
  const oneMark = look.chosen('spindle-sensor', 'one-mark-a-turn');
  const counts = oneMark
    ? lines
    : productOf('1', { lines, edges: assumed(4, '1', 'two tracks, two edges each') });
  return [
    planned('spindle', 'spindle-counts', 'Counts in one spindle turn', counts, {
      how: 'Turn the chuck ten whole turns by hand, read the counter, divide by ten. Spindle drive switched off and locked; only the control has power.',
    }),
    blank('spindle', 'spindle-mark', 'The one mark a turn', {
      how: 'Watch the input while the chuck is turned by hand: on once a turn, at the same place of the chuck each time.',
    }),
    blank('spindle', 'spindle-count-sign', 'Sign of the count', {
      how: 'Forward must count up. If not, change the sign here, not the wires, and write it down.',
    }),
  ];
}

/** Speed that the chuck, the lathe and the work allow; the lowest of them stands. */
function speedLimit(look: Look): Setting {
  const lathe = look.fact('spindle-speed-max');
  const chuck = look.measured('chuck-marked-speed');
  const limit = look.figure('chuck-speed-limit') ?? smallestOf(chuck ? { chuck, lathe } : { lathe });
  return planned(
    'spindle',
    'spindle-speed-limit',
    'Fastest speed, in the drive and in every program',
    limit,
    {
      how: 'The lowest of: mark on the chuck or faceplate, top speed the lathe left its maker with, what this work can stand. Set it in the drive for the fastest belt position, and clamp it in every program that keeps the cutting speed even.',
    },
  );
}

function command(look: Look): Setting[] {
  if (!look.chosen('speed-command', 'speed-by-voltage', 'speed-by-serial')) return [];
  return [
    blank('spindle', 'spindle-scale', 'Speed for the full signal', {
      how: 'Command a fifth, a half and nine tenths of the top speed; read a tachometer. Correct the scale, then try all three again.',
    }),
    blank('spindle', 'spindle-direction', 'Direction of the spindle', {
      how: 'Chuck off, lowest belt, guard shut: forward turns the top of the nose towards you. If not, swap two motor leads with the drive dead and measured.',
    }),
    planned(
      'spindle',
      'spindle-at-speed',
      'How near to its speed the spindle must be before a cut',
      assumed(0.05, '1', practice),
      {
        how: 'A share of the commanded speed. Too narrow and the program waits for ever.',
      },
    ),
  ];
}

function drive(look: Look): Setting[] {
  if (!look.chosen('spindle-motor', 'three-phase-drive', 'doubler-drive', 'servo-spindle', 'brushless-kit'))
    return [];
  const loose = !look.chosen('spindle-nose', 'cam-lock-nose', 'bolted-nose');
  const slow: Quantity = assumed(
    loose ? 5 : 3,
    's',
    loose ? 'a hard stop loosens a screwed chuck' : practice,
  );
  return [
    worked(
      'spindle',
      'spindle-frequency-cap',
      'Highest frequency of the drive',
      look.figure('drive-frequency-cap'),
      {
        how: 'Worked out for the fastest belt position. A cap set for a slow position lets the chuck run far too fast when the belt is moved.',
      },
    ),
    planned('spindle', 'spindle-speed-up', 'Time to speed up', slow, {
      how: 'Long enough that the drive never trips with the largest chuck.',
    }),
    planned('spindle', 'spindle-slow-down', 'Time to slow down', look.figure('stop-time') ?? slow, {
      how: loose
        ? 'Screwed nose: 5 seconds or more, no brake resistor and no reverse unless the chuck is held on.'
        : 'Timed with the largest chuck. A trip on too much voltage asks for more time or a resistor.',
    }),
    ...(look.chosen('spindle-stop', 'ramp-then-cut')
      ? [
          blank('spindle', 'spindle-cut-delay', 'Time after which the timer cuts the power', {
            how: 'A second more than the slow-down, timed with the largest chuck. Shorter, and the chuck coasts.',
          }),
        ]
      : []),
    planned(
      'spindle',
      'spindle-plate-current-set',
      'Motor current set in the drive',
      look.figure('spindle-cable-current'),
      {
        how: 'The plate of the motor, in amps. It protects the motor.',
      },
    ),
  ];
}

/** Everything that is set about the spindle. */
export function spindleSettings(look: Look): Setting[] {
  return [
    ...sensor(look),
    speedLimit(look),
    ...drive(look),
    ...command(look),
    blank('spindle', 'spindle-belt-card', 'Belt position against speeds', {
      how: 'For each position write down slowest and fastest speed by tachometer. Fix the card beside the belt cover.',
    }),
  ];
}
