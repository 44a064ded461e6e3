import { all, any, is, not, only } from '../../core/condition.ts';
import type { Rule } from '../../core/rule.ts';
import { hasSpareLathe } from './paths.ts';

const wornOut = all(is('condition', 'worn-bed'), not(is('purpose', 'learning')));

/** What the first answers say about converting at all. */
export const verdictRules: readonly Rule[] = [
  {
    id: 'one-offs-look-at-alternatives',
    subsystem: 'purpose',
    when: only('purpose', 'one-off-repairs'),
    then: [{ kind: 'verdict', verdict: 'alternatives-first' }],
    say: 'For single parts and repairs, stops, a readout or a powered feed usually help more than a conversion; look at those first.',
  },
  {
    id: 'worn-bed-do-not-convert',
    subsystem: 'purpose',
    when: wornOut,
    then: [{ kind: 'verdict', verdict: 'do-not-convert' }],
    say: 'No control can set out wear that changes along the bed: we would not convert this lathe unless learning is the aim.',
  },
  {
    id: 'learning-on-a-worn-bed',
    subsystem: 'purpose',
    when: all(is('condition', 'worn-bed'), is('purpose', 'learning')),
    then: [{ kind: 'warns', level: 'look' }],
    say: 'You want to learn, so a worn bed need not stop you; only do not expect long cuts to come out parallel.',
  },
  {
    id: 'nobody-wires-the-mains',
    subsystem: 'purpose',
    when: is('who-wires', 'nobody-wires'),
    then: [{ kind: 'verdict', verdict: 'get-help-first' }],
    say: 'Find somebody who can and may do the mains wiring before you buy anything; this is not work to learn alone.',
  },
  {
    id: 'threads-only-want-a-synchroniser',
    subsystem: 'purpose',
    when: all(
      is('purpose', 'thread-cutting'),
      only('purpose', 'thread-cutting', 'one-off-repairs'),
      not(is('condition', 'worn-bed')),
    ),
    then: [
      { kind: 'verdict', verdict: 'thread-synchroniser' },
      { kind: 'suggests', decision: 'driven-axes', options: ['carriage-only'] },
    ],
    say: 'For threads a full conversion is more than you need: a thread synchroniser on the lead screw does it if you change pitch about once a month or more, and change gears do it for less.',
  },
  {
    id: 'batches-beside-a-manual-lathe',
    subsystem: 'purpose',
    when: all(is('purpose', 'repeat-batches', 'profiles'), hasSpareLathe, not(is('condition', 'worn-bed'))),
    then: [{ kind: 'verdict', verdict: 'convert-conditional' }],
    say: 'A sound case if the parts have several diameters, curves or threads and the work will go on for years; for drill, turn and part off, a tailstock turret with a lever collet saves most of the time for far less.',
  },
  {
    id: 'employees-make-you-the-maker',
    subsystem: 'purpose',
    when: is('others-at-machine', 'people-i-employ'),
    then: [{ kind: 'warns', level: 'look' }],
    say: 'With people who work for you, you count as the maker of the changed machine in many places: ask about your local law and your insurer before you build.',
  },
  {
    id: 'others-can-reach-it',
    subsystem: 'purpose',
    when: is('others-at-machine', 'family-or-friends'),
    then: [{ kind: 'warns', level: 'note' }],
    say: 'Others can reach the machine, so the main switch gets a padlock and the key leaves with you.',
  },
  {
    id: 'survey-before-paying',
    subsystem: 'purpose',
    when: all(
      any(is('which-lathe', 'buy-a-donor'), is('which-lathe', 'dead-training-machine')),
      not(is('condition', 'measured-good')),
    ),
    then: [{ kind: 'warns', level: 'look' }],
    say: 'Measure bed, slides and spindle before you pay for the machine: wear cannot be given back.',
  },
];
