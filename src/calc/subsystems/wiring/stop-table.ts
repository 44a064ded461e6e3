import type { Look } from '../../core/figure.ts';
import { spindleDriveInCabinet } from './devices.ts';

/** One line of the table of what must stop: an event and what each part of the machine does about it. */
export interface StopRow {
  readonly id: string;
  readonly event: string;
  readonly axes: string;
  readonly spindle: string;
  readonly control: string;
  /** What has to be done before anything moves again. */
  readonly again: string;
}

const told = 'is told and stops its program';
const byHand = 'Cure the cause, press reset, then start by hand.';

/** How the spindle comes to rest when its power is taken. */
function spindleRests(look: Look): string {
  if (look.chosen('spindle-stop', 'ramp-then-cut')) return 'slows down, then a timer cuts its power';
  if (look.chosen('spindle-stop', 'drive-safe-off'))
    return 'loses its push by the safe-off input and coasts unless a ramp comes first';
  if (look.chosen('spindle-stop', 'mechanical-brake')) return 'loses its power and is held by the brake';
  return 'loses its power and coasts';
}

function always(look: Look): StopRow[] {
  const cut = 'lose their power';
  const spindle = spindleRests(look);
  const row = (id: string, event: string, axes: string, control: string, again = byHand): StopRow => ({
    id,
    event,
    axes,
    spindle,
    control,
    again,
  });
  return [
    row('button', 'Red button pressed', cut, told, 'Pull the button out, press reset, then start by hand.'),
    {
      id: 'dip',
      event: 'Power dips or fails',
      axes: cut,
      spindle: look.chosen('spindle-stop', 'mechanical-brake')
        ? 'is held by the brake'
        : 'coasts: nothing slows it down without power',
      control: 'may restart by itself',
      again: 'Nothing moves by itself; reset, then home.',
    },
    {
      id: 'return',
      event: 'Power comes back, or the button is pulled out',
      axes: 'stay dead',
      spindle: 'stays dead',
      control: 'shows that it was stopped',
      again: 'Reset alone starts nothing; a second, separate start does.',
    },
    {
      id: 'enable',
      event: 'The enable wire of a drive comes off',
      axes: 'that drive lets go, the program stops',
      spindle: 'stops',
      control: told,
      again: byHand,
    },
  ];
}

function hung(look: Look): StopRow {
  const watched = look.chosen('watchdog', 'heartbeat-relay', 'drive-enable-chain');
  return {
    id: 'hung',
    event: watched ? 'The control hangs: its sign of life stops' : 'The control hangs or is unplugged',
    axes: watched ? 'lose their power without it' : 'lose their power when the button is pressed',
    spindle: watched
      ? spindleRests(look)
      : 'goes on until the button is pressed, which works without the control',
    control: 'does nothing: that is the point of this line',
    again: 'Start the control anew, reset, home the slides.',
  };
}

function drives(look: Look): StopRow[] {
  const alarm: StopRow = {
    id: 'alarm',
    event: 'Alarm of an axis drive, or its alarm wire breaks',
    axes: 'all stop, not only the one',
    spindle: 'stops',
    control: told,
    again: 'Find why it slipped, reset, home again.',
  };
  const fault: StopRow = {
    id: 'fault',
    event: 'Fault of the spindle drive',
    axes: 'stop before the tool is dragged on',
    spindle: 'coasts: a drive in fault cannot brake',
    control: told,
    again: 'Read the fault, reset the drive by hand.',
  };
  const speaks = !look.chosen('axis-motor', 'open-loop-stepper');
  return [...(speaks ? [alarm] : []), ...(spindleDriveInCabinet(look) ? [fault] : [])];
}

function guards(look: Look): StopRow[] {
  const guard: StopRow = {
    id: 'guard',
    event: 'Chuck guard opened',
    axes: 'hold',
    spindle: `${spindleRests(look)}; cannot start while it is open`,
    control: told,
    again: 'Shut the guard; that alone starts nothing.',
  };
  const limit: StopRow = {
    id: 'limit',
    event: 'A limit switch opens or its wire breaks',
    axes: 'stop',
    spindle: 'goes on until the operator stops it',
    control: told,
    again: 'Jog off the switch slowly, home again.',
  };
  return [
    ...(look.chosen('chuck-guard', 'shield-with-switch') ? [guard] : []),
    ...(look.chosen('home-limits', 'home-and-limit-switches') ? [limit] : []),
  ];
}

function air(look: Look): StopRow[] {
  if (!look.chosen('work-holding', 'power-chuck')) return [];
  return [
    {
      id: 'air',
      event: 'Air for the chuck fails',
      axes: 'hold',
      spindle: spindleRests(look),
      control: told,
      again: 'Restore the air, check the grip, reset.',
    },
  ];
}

/** The table of what must stop on this machine. Every line is filled on paper and proved with lamps, then on the lathe. */
export const stopTable = (look: Look): StopRow[] => [
  ...always(look),
  hung(look),
  ...drives(look),
  ...guards(look),
  ...air(look),
];
