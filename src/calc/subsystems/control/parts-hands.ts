import { all, any, is, not } from '../../core/condition.ts';
import type { Part } from '../../core/part.ts';
import { onComputer, synchroniser } from './kinds.ts';

const panelWheels = is('operator-panel', 'handwheel-panel');

export const handParts: readonly Part[] = [
  {
    id: 'screen',
    subsystem: 'control',
    name: 'Screen with its bracket',
    note: 'Readable from where you stand; out of the line of chips.',
    unit: 'each',
    combine: 'most',
    needs: [
      { when: onComputer, qty: 1, why: 'the screen of the PC' },
      {
        when: is('control', 'small-board'),
        qty: 1,
        why: 'a screen or tablet for the program that feeds the board',
      },
    ],
  },
  {
    id: 'touch-panel-surcharge',
    subsystem: 'control',
    name: 'Touch panel, added price over a plain screen',
    note: 'The kind that works with oily fingers and through thin gloves taken off.',
    unit: 'each',
    combine: 'most',
    needs: [{ when: is('operator-panel', 'touch-screen'), qty: 1, why: 'a screen that can be pressed' }],
  },
  {
    id: 'screen-arm',
    subsystem: 'control',
    name: 'Arm or stand for the screen',
    note: 'Stiff enough to press against, and reaching past the headstock.',
    unit: 'each',
    combine: 'most',
    needs: [
      { when: is('operator-panel', 'touch-screen'), qty: 1, why: 'holds the touch screen where you stand' },
    ],
  },
  {
    id: 'keyboard-part',
    subsystem: 'control',
    name: 'Sealed keyboard and mouse',
    note: 'One that can be wiped and has no gaps for chips.',
    unit: 'set',
    combine: 'most',
    needs: [{ when: onComputer, qty: 1, why: 'setting up the PC' }],
  },
  {
    id: 'feed-hold-button',
    subsystem: 'control',
    name: 'Real buttons for feed hold and start, in a small box',
    note: 'Two buttons wired to inputs: what stops the feed is never only on a screen.',
    unit: 'set',
    combine: 'most',
    needs: [
      {
        when: is('operator-panel', 'keyboard-and-mouse', 'touch-screen'),
        qty: 1,
        why: 'feed hold must be a button that you can feel',
      },
    ],
  },
  {
    id: 'handwheel-pendant',
    subsystem: 'control',
    name: 'Hand pendant with a clicking wheel',
    note: 'Take one with two signals for direction and an enable button on its side.',
    unit: 'each',
    combine: 'most',
    inspect: 'A hundred clicks forward and back return to zero.',
    needs: [
      {
        when: all(is('hand-use', 'electronic-handwheels'), not(any(panelWheels, synchroniser))),
        qty: 1,
        why: 'electronic handwheel for moving the slides by hand',
      },
      { when: is('operator-panel', 'pendant-and-buttons'), qty: 1, why: 'the pendant of the operator panel' },
    ],
  },
  {
    id: 'panel-handwheels',
    subsystem: 'control',
    name: 'Two panel handwheels',
    note: 'Encoders with a crank knob and clicks, 100 a turn.',
    unit: 'pair',
    combine: 'most',
    inspect: 'A hundred clicks forward and back return to zero.',
    needs: [{ when: panelWheels, qty: 1, why: 'one wheel for each slide' }],
  },
  {
    id: 'panel-buttons',
    subsystem: 'control',
    name: 'Buttons, selector switches, feed knob and a box',
    note: 'Cycle start, feed hold, feed rate, axis and step size.',
    unit: 'lot',
    combine: 'most',
    spares: 'Two contact blocks.',
    needs: [
      { when: is('operator-panel', 'pendant-and-buttons'), qty: 1, why: 'the buttons beside the pendant' },
      { when: panelWheels, qty: 2, why: 'a panel needs a larger box and the switches for two wheels' },
    ],
  },
];
