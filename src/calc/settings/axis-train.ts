import type { Look } from '../core/figure.ts';
import type { Quantity } from '../core/quantity.ts';
import { blank, planned, type Setting, settled, worked } from './setting.ts';

export type Slide = 'carriage' | 'cross';

const steppers = (look: Look): boolean =>
  look.chosen('axis-motor', 'open-loop-stepper', 'closed-loop-stepper');

/** A slide moves by what it moves; across the work that is a radius. */
export const across = (slide: Slide): Pick<Setting, 'diameterOrRadius'> =>
  slide === 'cross' ? { diameterOrRadius: 'radius' } : {};

function turns(look: Look, slide: Slide): Setting[] {
  if (!steppers(look))
    return [
      blank(slide, `${slide}-counts-per-turn`, 'Counts in one motor turn', {
        how: 'Lines of the encoder on the motor, times four. Data sheet of the motor.',
      }),
      blank(slide, `${slide}-electronic-gear`, 'Gear inside the drive', {
        how: 'Pulses that the drive takes for one motor turn. Set it in the drive and write both numbers down.',
      }),
    ];
  return [
    worked(
      slide,
      `${slide}-full-steps`,
      'Full steps in one motor turn',
      look.figure(`${slide}-steps-per-turn`),
      {
        how: 'Data sheet of the motor.',
      },
    ),
    planned(
      slide,
      `${slide}-microsteps`,
      'Pulses in one full step (microsteps)',
      look.figure(`${slide}-microsteps`),
      {
        how: 'Switches on the drive. Write down how they stand.',
      },
    ),
  ];
}

/** From the motor to the slide, and the figure the control needs most. */
export function trainSettings(look: Look, slide: Slide): Setting[] {
  const lead: Quantity | undefined = look.figure(`${slide}-lead`);
  return [
    ...turns(look, slide),
    worked(slide, `${slide}-ratio`, 'Motor turns for one screw turn', look.figure(`${slide}-ratio`), {
      how: 'Teeth on the screw pulley divided by teeth on the motor pulley. Count both.',
    }),
    worked(slide, `${slide}-lead`, 'Travel for one screw turn (lead)', lead, {
      how: 'Catalogue of the screw, or ten turns measured and divided by ten.',
      ...across(slide),
    }),
    planned(
      slide,
      `${slide}-steps-per-length`,
      'Pulses for each length of travel',
      look.figure(`${slide}-steps-per-length`),
      {
        how: 'Worked out from motor, pulleys and screw. Then move 50 mm against a scale and 100 mm, or the whole travel if it is less, against blocks: new figure = old × commanded ÷ measured.',
        ...across(slide),
      },
    ),
    blank(slide, `${slide}-direction`, 'Sign of the direction', {
      how:
        slide === 'cross'
          ? 'Drives at half current, slow. Jog plus: the slide moves away from the centre. If not, turn the sign round.'
          : 'Drives at half current, slow. Jog plus: the carriage moves to the tailstock. If not, turn the sign round.',
    }),
    ...(slide === 'cross' && !look.chosen('control', 'thread-synchroniser')
      ? [
          settled(
            'cross',
            'cross-program-mode',
            'What programs mean by a figure across',
            'diameter',
            'Programs say diameters; the slide moves half of it. Command 10 mm in diameter mode: an indicator on the slide reads 5 mm.',
            'diameter',
          ),
        ]
      : []),
  ];
}
