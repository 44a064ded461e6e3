import { all, any, is, not } from '../../core/condition.ts';
import type { Task } from '../../core/task.ts';
import { carriageDriven, crossDriven } from '../motors/driven.ts';
import { oneSlide, screwsToCover } from './wired.ts';

const oiler = is('lubrication', 'one-shot-oiler');
const flood = is('chips-and-coolant', 'flood');
const trainingMachine = is('which-lathe', 'dead-training-machine');

/** Covers, coolant and oil. */
export const careTasks: readonly Task[] = [
  {
    id: 'fit-oiler',
    subsystem: 'wiring',
    stage: 'carriage-stage',
    name: 'Drill the carriage for oil and fit the pump',
    hours: [2.5, 5, 9],
    when: all(oiler, carriageDriven, not(trainingMachine)),
    after: ['strip-carriage', 'incoming-inspection'],
    tools: 'Drill press, long drills, tap, tube cutter',
    lathe: 'out',
    undo: 'cannot-be-undone',
    test: 'Two pulls of the pump bring oil to every carriage way and nut; no chip left in a hole.',
    safety: 'Depth stop on the drill, part clamped, eyes covered; blow no chips, wash and vacuum them out.',
  },
  {
    id: 'fit-oiler-cross',
    subsystem: 'wiring',
    stage: 'cross-stage',
    name: 'Drill the cross slide for oil and join its lines',
    hours: [1.5, 3, 5],
    when: all(oiler, crossDriven, not(trainingMachine)),
    after: ['strip-cross-slide', 'incoming-inspection'],
    tools: 'Drill press, long drills, tap, tube cutter',
    lathe: 'out',
    undo: 'cannot-be-undone',
    test: 'Two pulls of the pump bring oil to every cross way and the nut; lines clear of the screw over the whole travel.',
    safety: 'Depth stop on the drill, part clamped, eyes covered; blow no chips, wash and vacuum them out.',
  },
  {
    id: 'fit-oiler-assembled',
    subsystem: 'wiring',
    stage: 'machine-wiring',
    name: 'Fit the pump to the oil points that are there',
    hours: [1, 3, 6],
    when: all(oiler, trainingMachine),
    after: ['run-cables'],
    tools: 'Tube cutter, spanners',
    lathe: 'out',
    undo: 'can-be-undone',
    test: 'Two pulls of the pump bring oil to every way and nut.',
    safety: 'Main switch locked off. Oil on the floor is wiped up at once.',
  },
  {
    id: 'fit-covers',
    subsystem: 'wiring',
    stage: 'machine-wiring',
    name: 'Fit wipers and covers over ways and screws',
    hours: [1, 2.5, 6],
    when: any(screwsToCover, is('chips-and-coolant', 'mist-or-air', 'flood')),
    after: ['run-cables'],
    tools: 'Knife, drill, screws',
    lathe: 'out',
    undo: 'can-be-undone',
    test: 'Full travel by hand with no extra drag; no screw seen from above with covers on.',
    safety:
      'Main switch locked off. A spiral cover snaps open and has edges like a blade: gloves here, off again at the lathe.',
    scale: [
      { when: is('way-covers', 'wipers-only'), by: 0.5, why: 'only lips and felts' },
      { when: oneSlide, by: 0.7, why: 'one slide only' },
    ],
    extra: [
      {
        id: 'extra-fit-covers-spring',
        when: is('way-covers', 'spring-covers'),
        hours: [1, 2, 5],
        why: 'each spiral cover gets two cups, and the screw end comes out again',
      },
      {
        id: 'extra-fit-covers-mist',
        when: is('chips-and-coolant', 'mist-or-air'),
        hours: [1, 3, 6],
        why: 'nozzle, valve and lines',
      },
      {
        id: 'extra-fit-covers-flood',
        when: flood,
        hours: [11.5, 25, 48],
        why: 'walls, tray, tank and pump',
      },
    ],
  },
  {
    id: 'coolant-leak-test',
    subsystem: 'wiring',
    stage: 'machine-wiring',
    name: 'Run coolant for an hour with the electrics off',
    hours: [0.5, 1, 2],
    when: flood,
    after: ['fit-covers', 'fit-guards', 'fit-home-switches'],
    tools: 'The pump on an outlet of its own with ground-fault protection, dry paper',
    lathe: 'out',
    undo: 'can-be-undone',
    test: 'Paper in the cabinet, at motors and at plugs is dry; everything drains to the tank.',
    safety: 'Main switch of the lathe locked off; dry everything before it is switched on again.',
  },
];
