import { atLeastLimit, atMost, type Check, type CheckRule } from '../../core/check.ts';
import { assumed } from '../../core/quantity.ts';
import { productOf } from '../../core/steps.ts';
import { SECOND_EARTH_CURRENT } from '../../formulas/leakage.ts';
import { holdsCharge } from './devices.ts';

const supply: CheckRule = (look) =>
  atMost({
    id: 'supply-current',
    harm: true,
    label: 'Current of the whole machine',
    value: look.figure('machine-current'),
    limit: productOf('A', {
      rating: look.figure('circuit-rating'),
      share: assumed(0.8, '1', 'a circuit is loaded to four fifths for long work; common practice'),
    }),
    comfort: 1.1,
    remedy: `${
      look.chosen('supply-circuit', 'new-circuit')
        ? 'Ask the electrician for a larger circuit'
        : 'Have an electrician fit a circuit for the lathe'
    }, or keep the spindle motor it has. The plate of the drive decides, not this estimate.`,
    decisions: ['supply-circuit', 'spindle-motor', 'motor-size'],
  });

const cord: CheckRule = (look) =>
  atLeastLimit({
    id: 'mains-cord',
    harm: true,
    label: 'Mains cord against the breaker it hangs on',
    value: look.figure('mains-cord-ampacity'),
    limit: look.figure('circuit-rating'),
    remedy: 'Ask an electrician: a circuit of this size wants fixed wiring, not a cord.',
    decisions: ['supply-circuit'],
  });

const readTheDevice =
  'Needs: which earth-leakage (ground-fault) device feeds the outlet. Look for a test button and read the figure beside it, or ask an electrician.';

const leakage: CheckRule = (look) => {
  const unknown = look.figure('residual-device-rating') === undefined;
  if (unknown && look.chosen('ground-fault-device', 'no-device')) return undefined;
  return atMost({
    id: 'earth-leakage',
    harm: true,
    label: 'Leakage to earth against the safety device',
    value: look.figure('earth-leakage'),
    limit: look.figure('leakage-allowance'),
    comfort: 1.3,
    remedy: unknown
      ? readTheDevice
      : 'Never bypass the device and never lift an earth. Ask an electrician for a suitable device or circuit.',
    decisions: ['ground-fault-device', 'spindle-motor', 'supply-circuit'],
  });
};

/** More leakage than one earth wire may carry is no fault: the plan buys the second, and a meter proves it. */
const secondEarth: CheckRule = (look) => {
  const check: Check = atMost({
    id: 'second-earth',
    harm: true,
    label: 'Leakage against one earth wire',
    value: look.figure('earth-leakage'),
    limit: assumed(SECOND_EARTH_CURRENT, 'A', 'IEC 61800-5-1, as quoted in drive makers’ manuals'),
    remedy:
      'Fit the second earth wire that the plan buys, or have an electrician make a fixed connection. Measure both before the first switch-on.',
    testWhen: 'When bed, door and motors are bonded: under 0.1 ohm by each earth wire alone.',
    decisions: ['spindle-motor', 'axis-motor'],
  });
  return check.result === 'stop' ? { ...check, result: 'look' } : check;
};

/** Waiting is never enough by itself; only a meter says that a drive is dead. */
const deadBus: CheckRule = (look) => {
  if (!holdsCharge(look)) return undefined;
  const seconds = look.figure('bus-bleed-time');
  const least = seconds ? ` It cannot be sooner than about ${Math.ceil(seconds.value)} seconds.` : '';
  return atMost({
    id: 'drive-discharged',
    harm: true,
    label: 'Voltage left in a drive before a hand goes near it',
    value: undefined,
    limit: look.figure('safe-bus-voltage'),
    remedy: `Switch off, lock, wait the longest time on any label, then measure with a meter tried on a known source before and after.${least}`,
    testWhen: 'Each time, before a cover of a drive or supply comes off. A time alone never proves it.',
    decisions: ['spindle-motor', 'axis-motor'],
  });
};

export const supplyChecks: readonly CheckRule[] = [supply, cord, leakage, secondEarth, deadBus];
