import { all, is, not } from '../../core/condition.ts';
import type { Task } from '../../core/task.ts';
import { oneSlide, servoAxes, spindleOnDrive, synchroniser } from './wired.ts';

const watched = is('stop-circuit', 'cuts-power-watched');

/** On paper and on the bench. */
export const benchTasks: readonly Task[] = [
  {
    id: 'wiring-schematic',
    subsystem: 'wiring',
    stage: 'design-and-order',
    name: 'Draw the wiring, list inputs and outputs, lay out the cabinet',
    hours: [3, 6, 12],
    after: ['freeze-the-path'],
    tools: 'Paper or a drawing program, the manuals of every part',
    lathe: 'usable',
    undo: 'can-be-undone',
    test: 'Every wire has a number. A table says for each event (button, guard, hung control, power dip) what stops and what may start again.',
    safety: 'What feeds the cabinet follows the local code; let an electrician read the mains sheet.',
    scale: [{ when: synchroniser, by: 0.4, why: 'one page: a box, a sensor and the stop circuit' }],
  },
  {
    id: 'fit-out-cabinet',
    subsystem: 'wiring',
    stage: 'bench-electrics',
    name: 'Fit out the cabinet',
    hours: [5, 9, 16],
    after: ['wiring-schematic', 'order-short-lead', 'incoming-inspection'],
    tools: 'Drill, hole saw, crimper, torque screwdriver, low-ohm meter',
    lathe: 'usable',
    undo: 'can-be-undone',
    mains: true,
    test: 'Screws torqued; earth from bar to backplate and door under 0.1 ohm, lead resistance taken off; nothing live can be touched.',
    safety:
      'Unplugged while you work. Before touching a supply or drive wait the longest time on any label, then measure under 60 V with a meter tried on a known source before and after.',
    extra: [
      {
        id: 'extra-fit-out-cabinet-drive',
        when: spindleOnDrive,
        hours: [2, 5, 8],
        why: 'spindle drive, filter and screened leads',
      },
      {
        id: 'extra-fit-out-cabinet-watched',
        when: watched,
        hours: [3, 6, 11],
        why: 'two channels and a safety relay',
      },
      {
        id: 'extra-fit-out-cabinet-old-switch',
        when: is('old-switchgear', 'keep-no-volt-switch'),
        hours: [0.3, 1, 2],
        why: 'the old switch is traced and joined to the new circuit',
      },
      {
        id: 'extra-fit-out-cabinet-circuit',
        when: is('supply-circuit', 'new-circuit'),
        hours: [0, 1, 3],
        why: 'being there for the electrician',
      },
    ],
    scale: [
      { when: is('housing', 'plastic-box'), by: 0.8, why: 'plastic is quicker to cut' },
      { when: is('housing', 'open-board'), by: 0.5, why: 'nothing to cut, no door, no fan' },
      { when: synchroniser, by: 0.5, why: 'one supply and one or two drives' },
      { when: all(synchroniser, oneSlide), by: 0.8, why: 'a single drive' },
    ],
  },
  {
    id: 'prove-stop-circuit',
    subsystem: 'wiring',
    stage: 'bench-electrics',
    name: 'Prove the stop circuit with lamps in place of motors',
    hours: [1, 2, 4],
    after: ['fit-out-cabinet'],
    afterWhen: [{ when: not(servoAxes), after: ['bench-motors'] }],
    tools: 'Lamps or a meter, the table of what must stop',
    lathe: 'usable',
    undo: 'can-be-undone',
    test: 'Every row passes with the control running, crashed and unplugged. Releasing the button, shutting the guard or returning power starts nothing.',
    safety: 'Lamps only. No motor is joined to a circuit that has not passed.',
    note: 'Servos run away when their encoder is reversed, so with servos the stop is proved before the first motor turns.',
    extra: [
      {
        id: 'extra-prove-stop-circuit-watched',
        when: watched,
        hours: [2, 4, 7],
        why: 'each channel and contact is failed in turn',
      },
      {
        id: 'extra-prove-stop-circuit-safe-off',
        when: is('spindle-stop', 'drive-safe-off'),
        hours: [0.5, 1.5, 3],
        why: 'the safe-off input is proved by itself',
      },
    ],
    scale: [{ when: synchroniser, by: 0.6, why: 'a short table: no guard switch, no computer that hangs' }],
  },
];
