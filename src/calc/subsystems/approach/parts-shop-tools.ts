import { all, is, not } from '../../core/condition.ts';
import type { Need, Part } from '../../core/part.ts';
import { leadScrewSynchroniser } from './paths.ts';

const half = is('shop-tools', 'have-some-shop-tools', 'have-no-shop-tools');
const none = is('shop-tools', 'have-no-shop-tools');
/** A synchroniser on the lead screw lines up no screw, sets no speed and opens no spindle. */
const largerJob = not(leadScrewSynchroniser);

interface Tool extends Pick<Part, 'id' | 'name' | 'note' | 'unit'> {
  readonly when: Need['when'];
  readonly why: string;
  readonly inspect?: string;
}

const tool = ({ when, why, ...rest }: Tool): Part => ({
  ...rest,
  subsystem: 'approach',
  combine: 'most',
  shopTool: true,
  needs: [{ when, qty: 1, why }],
});

/** Tools that outlive the job. */
export const shopToolParts: readonly Part[] = [
  tool({
    id: 'dial-indicator',
    name: 'Dial indicator with magnetic base',
    note: 'Reads hundredths of a millimetre over 10 mm. The base must not creep.',
    unit: 'set',
    when: half,
    why: 'survey, alignment and play',
    inspect: 'Returns to the same reading within half a division, ten times.',
  }),
  tool({
    id: 'lever-indicator',
    name: 'Lever indicator',
    note: 'The small finger kind, for bores and for lining up a screw.',
    unit: 'each',
    when: all(none, largerJob),
    why: 'bores, faces and screws in both planes',
  }),
  tool({
    id: 'multimeter',
    name: 'Multimeter',
    note: 'Rated for mains (category III), with fused leads. It cannot read an earth of under 0.1 ohm: borrow a low-ohm meter for that.',
    unit: 'each',
    when: half,
    why: 'every supply is measured before anything is plugged into it',
  }),
  tool({
    id: 'crimpers',
    name: 'Crimpers for ferrules and terminals',
    note: 'Ratchet types. Pliers do not make a crimp.',
    unit: 'set',
    when: half,
    why: 'a hundred and fifty to three hundred wire ends',
  }),
  tool({
    id: 'calipers-and-micrometer',
    name: 'Calipers and a micrometer',
    note: '150 mm calipers and a 0 to 25 mm micrometer.',
    unit: 'set',
    when: none,
    why: 'shafts, bores and test bars',
  }),
  tool({
    id: 'tachometer',
    name: 'Optical tachometer',
    note: 'Reads turns a minute from a strip of tape.',
    unit: 'each',
    when: all(half, largerJob),
    why: 'the spindle speed is set at three points',
  }),
  tool({
    id: 'spring-scale',
    name: 'Spring scale to 300 N',
    note: 'A luggage scale to 30 kg does.',
    unit: 'each',
    when: half,
    why: 'friction of the slides and the push test',
  }),
  tool({
    id: 'noise-probe',
    name: 'Pocket oscilloscope or logic probe',
    note: 'Shows what a meter is too slow for: false pulses and counts.',
    unit: 'each',
    when: all(none, largerJob),
    why: 'hunting electrical noise',
  }),
  tool({
    id: 'pullers-and-spanners',
    name: 'Bearing puller, pin spanner, small torque wrench',
    note: 'For spindle nuts, pulleys and bearing preload.',
    unit: 'set',
    when: all(none, largerJob),
    why: 'taking apart without a hammer',
  }),
];
