import type { Look } from '../core/figure.ts';
import { assumed } from '../core/quantity.ts';
import { productOf } from '../core/steps.ts';
import { across, type Slide } from './axis-train.ts';
import { blank, planned, type Setting } from './setting.ts';

const practice = 'common practice, no source';
const closed = (look: Look): boolean => !look.chosen('axis-motor', 'open-loop-stepper');

function speeds(look: Look, slide: Slide): Setting[] {
  return [
    planned(slide, `${slide}-top-speed`, 'Fastest move', look.fact(`${slide}-rapid`), {
      how: 'With homing and provisional limits set: raise by a fifth at a time until it stalls or falls behind. Keep 60 to 70 % of what you find, and never more than the plan.',
      ...across(slide),
    }),
    planned(slide, `${slide}-acceleration`, 'Acceleration', look.fact('slide-acceleration'), {
      how: 'The same search at the top speed you keep. Keep 50 to 60 % of what you find.',
      ...across(slide),
    }),
    planned(slide, `${slide}-jog-speed`, 'Jog speed', assumed(0.01, 'm/s', practice), {
      how: 'To taste. Slow enough to stop before the chuck.',
      ...across(slide),
    }),
  ];
}

function motor(look: Look, slide: Slide): Setting[] {
  const run = look.figure(`${slide}-motor-current`);
  const idle = productOf('A', { run, share: assumed(0.5, '1', practice) });
  const stepper = look.chosen('axis-motor', 'open-loop-stepper', 'closed-loop-stepper');
  return [
    planned(slide, `${slide}-run-current`, 'Motor current, running', run, {
      how: 'Rated current of a winding. Where the drive is set in peak amps, 1.4 times that. After an hour the motor case stays under 70 °C.',
    }),
    ...(stepper
      ? [
          planned(slide, `${slide}-idle-current`, 'Motor current, standing still', idle, {
            how: 'Half, set in the drive.',
          }),
        ]
      : []),
    ...(closed(look)
      ? [
          planned(
            slide,
            `${slide}-following-limit`,
            'How far it may fall behind before it stops',
            assumed(0.15e-3, 'm', practice),
            {
              how: 'Start at 1 mm and tighten to 0.1 to 0.2 mm. Then feed slowly against a block of wood, hands away: it must stop.',
              ...across(slide),
            },
          ),
          blank(slide, `${slide}-alarm-polarity`, 'Alarm and enable: open or closed when all is well', {
            how: 'With the power off take the alarm wire out, then switch on: the machine must refuse to move. If it does not, turn the sense round.',
          }),
        ]
      : [
          blank(slide, `${slide}-enable-polarity`, 'Enable: open or closed when all is well', {
            how: 'With the power off take the enable wire out, then switch on: the motor must stay limp. If it does not, turn the sense round.',
          }),
        ]),
  ];
}

function play(look: Look, slide: Slide): Setting[] {
  const measured = slide === 'cross' ? look.measured('cross-play') : undefined;
  return [
    planned(slide, `${slide}-play`, 'Play (backlash)', measured, {
      how: `Indicator on the slide. Come from one side, back off 1 mm, return; mean of three places.${slide === 'cross' ? ' It counts twice on the diameter.' : ''}`,
      ...across(slide),
    }),
    planned(
      slide,
      `${slide}-play-compensation`,
      'Play that the control makes up for',
      assumed(0, 'm', 'none until the mechanics are right'),
      {
        how: 'Mend the mechanics first. It moves the slide, but the cut still pulls the slide through the gap.',
        ...across(slide),
      },
    ),
    blank(slide, `${slide}-screw-map`, 'Table of screw errors (optional)', {
      how: 'Only where the error is more than 0.02 mm in 100 mm: every 25 mm against blocks.',
      ...across(slide),
    }),
  ];
}

/** How fast, how hard, and what is lost on the way. */
export const motionSettings = (look: Look, slide: Slide): Setting[] => [
  ...speeds(look, slide),
  ...motor(look, slide),
  ...play(look, slide),
];
