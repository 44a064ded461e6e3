import { all, is } from '../../core/condition.ts';
import type { Task } from '../../core/task.ts';
import { oneSlide } from '../motors/driven.ts';
import { synchroniser, twoMachines } from './kinds.ts';

export const useTasks: readonly Task[] = [
  {
    id: 'learn-the-machine',
    subsystem: 'control',
    stage: 'prove',
    name: 'Learn it: offsets, diameter mode, first programs',
    hours: [6, 15, 40],
    after: ['air-cut'],
    tools: 'Practice stock, one template program',
    lathe: 'usable',
    undo: 'can-be-undone',
    test: 'Without the manual you cut a thread up to a shoulder; where programs are run, you also set three tools, cut a stepped bar and mend one wrong offset.',
    safety:
      'First run of any program: air cut, one line at a time, a quarter of the feed, guard shut, hand on feed hold.',
    extra: [
      {
        id: 'extra-learn-the-machine-typed',
        when: is('program-making', 'typed-programs'),
        hours: [6, 12, 30],
        why: 'a language to learn, with arcs and diameters',
      },
      {
        id: 'extra-learn-the-machine-drawing',
        when: is('program-making', 'drawing-to-path'),
        hours: [10, 20, 50],
        why: 'drawing, tool paths, and the translator to your control',
      },
    ],
    scale: [
      { when: synchroniser, by: 0.4, why: 'no programs, only pitches, stops and tapers' },
      { when: all(synchroniser, oneSlide), by: 0.6, why: 'pitches and one stop; no tapers' },
    ],
  },
  {
    id: 'changeover-wiring',
    subsystem: 'control',
    stage: 'bench-electrics',
    name: 'Fit the changeover plugs and their interlock',
    hours: [4, 9, 20],
    when: twoMachines,
    after: ['fit-out-cabinet', 'wiring-schematic', 'incoming-inspection'],
    tools: 'Crimper, meter, label printer',
    lathe: 'usable',
    undo: 'can-be-undone',
    mains: true,
    test: 'With the key at one machine every pin of the other is dead, measured; no plug fits a wrong socket; either stop button drops both.',
    safety:
      'Plugs come apart only with power off and the inside measured under 60 V. Mains plugs for a spindle are work for an electrician.',
  },
  {
    id: 'settings-for-each-machine',
    subsystem: 'control',
    stage: 'prove',
    name: 'Make a settings set for each machine and prove the changeover',
    hours: [3, 7, 16],
    when: twoMachines,
    after: ['homing-and-soft-limits', 'changeover-wiring'],
    tools: 'Indicator, rule, a card for each machine',
    lathe: 'usable',
    undo: 'can-be-undone',
    test: 'Changed over five times: the control names the machine it is on, refuses to start with the wrong set, and 50 mm measure 50 mm.',
    safety:
      'After each changeover: homing first, then one slow move in the middle of the travel with a hand on the stop.',
  },
];
