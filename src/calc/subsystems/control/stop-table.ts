import type { Look } from '../../core/figure.ts';

/** One case of the stop table: what is done, and what must then be seen. */
export interface StopCase {
  readonly id: string;
  readonly cause: string;
  readonly axes: string;
  readonly spindle: string;
  readonly control: string;
  readonly reset: string;
  /** Whether the case can arise on this machine. */
  readonly when?: (look: Look) => boolean;
}

const off = 'Stop at once, no torque';
const ramp = 'Stops as planned for the red button';
const told = 'Program stops and says why';
const byHand = 'Cause gone, reset pressed, then start pressed';
const nothing = 'Nothing moves';

const hasDriveAlarm = (look: Look): boolean =>
  look.chosen('axis-motor', 'closed-loop-stepper', 'mains-servo', 'used-dc-servo');
const spindleOnDrive = (look: Look): boolean =>
  look.chosen('spindle-motor', 'three-phase-drive', 'doubler-drive', 'brushless-kit', 'servo-spindle');

/** What every stop has to do; a case is proved when all four columns were seen on the machine, chuck off. */
const cases: readonly StopCase[] = [
  {
    id: 'red-button',
    cause: 'Red button pressed, program running',
    axes: off,
    spindle: ramp,
    control: told,
    reset: byHand,
  },
  {
    id: 'control-hung',
    cause: 'Control stopped dead: plug of its link or supply pulled',
    axes: off,
    spindle: ramp,
    control: 'Stays off',
    reset: byHand,
  },
  {
    id: 'heartbeat-lost',
    cause: 'Sign of life taken away from its relay',
    axes: off,
    spindle: ramp,
    control: told,
    reset: byHand,
    when: (look) => look.chosen('watchdog', 'heartbeat-relay', 'drive-enable-chain'),
  },
  {
    id: 'drive-alarm',
    cause: 'Alarm of an axis drive, or its alarm wire broken',
    axes: off,
    spindle: ramp,
    control: told,
    reset: byHand,
    when: hasDriveAlarm,
  },
  {
    id: 'spindle-drive-fault',
    cause: 'Fault of the spindle drive, or its fault wire broken',
    axes: 'Feed stops',
    spindle: 'Coasts or ramps, does not start again',
    control: told,
    reset: byHand,
    when: spindleOnDrive,
  },
  {
    id: 'guard-opened',
    cause: 'Chuck guard opened',
    axes: 'Feed stops',
    spindle: 'Stops, and cannot be started',
    control: told,
    reset: 'Guard shut, then start pressed',
    when: (look) => look.chosen('chuck-guard', 'shield-with-switch'),
  },
  {
    id: 'limit-reached',
    cause: 'Limit switch pressed by hand, and its wire broken',
    axes: off,
    spindle: ramp,
    control: told,
    reset: 'Slide moved off by hand or override, then reset',
    when: (look) => look.chosen('home-limits', 'home-and-limit-switches'),
  },
  {
    id: 'power-dip',
    cause: 'Mains gone for a second',
    axes: off,
    spindle: 'Coasts',
    control: 'Needs homing again',
    reset: byHand,
  },
  {
    id: 'power-returns',
    cause: 'Mains back after a long break',
    axes: nothing,
    spindle: 'Does not start',
    control: 'Waits',
    reset: byHand,
  },
  {
    id: 'reset-pressed',
    cause: 'Red button pulled out and reset pressed',
    axes: nothing,
    spindle: 'Does not start',
    control: 'Ready, waits for start',
    reset: 'Start pressed',
  },
  {
    id: 'enable-broken',
    cause: 'Enable wire of the drives pulled off',
    axes: off,
    spindle: 'No command, cannot start',
    control: told,
    reset: byHand,
  },
];

/** The cases that this machine has to prove. */
export const stopCases = (look: Look): readonly StopCase[] =>
  cases.filter(({ when }) => when === undefined || when(look));
