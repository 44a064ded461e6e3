import type { Decision } from '../../core/decision.ts';
import { ballOnCarriage, carriageAsked } from './screw.ts';

const carriageDrive: Decision = {
  id: 'carriage-drive',
  subsystem: 'carriage',
  place: 'guide',
  name: 'Carriage drive',
  ask: 'What will push the carriage along the bed?',
  why: 'This sets the push, the play and whether the handwheel survives. It is the largest mechanical choice on the lathe.',
  thumb:
    'The play that you measure in the half-nut today, often 0.1 to 0.5 mm, is the play you keep if you keep the half-nut.',
  findOut:
    'Close the half-nut. Set an indicator on the bed against the carriage and push the carriage towards the tailstock, then towards the chuck, by hand. Write down how far the needle moves without the screw turning, near the chuck and near the tailstock.',
  askWhen: carriageAsked,
  assume: ['ball-screw-front', 'ball-screw-back', 'sliding-screw', 'original-lead-screw', 'rack-pinion'],
  assumeWhy:
    'Until you choose we plan with a ball screw in the place of the lead screw: a short, stiff line of push.',
  open: 'options',
  options: [
    {
      id: 'ball-screw-front',
      label: 'Ball screw in place of the lead screw',
      means:
        'A new screw whose nut rolls on balls, at the front of the bed; its nut bolts under or behind the apron.',
      gains:
        'The line of push is short and stiff, and it is the easiest place to line up: the old brackets show where.',
      wrong:
        'The apron has to be emptied or replaced, and hand feed by the rack goes with it. A thin nut bracket bends and twists the carriage: play grows when you push harder.',
      skill: 3,
      needs: 'Drilling, tapping and boring.',
    },
    {
      id: 'ball-screw-back',
      label: 'Ball screw along the back of the bed',
      means: 'The same kind of screw, on brackets behind the bed; a tongue from the saddle carries the nut.',
      gains: 'The apron and its hand feed can stay as they are.',
      wrong:
        'It pulls to one side of the cut, so the carriage yaws: lengths differ front and back. Chips and coolant fall on the screw, and the motor may meet the wall or the tray.',
      skill: 4,
      needs:
        'Drilling the back of the bed, a straight bar to line up by, room behind for motor and tailstock.',
    },
    {
      id: 'original-lead-screw',
      label: 'The lead screw it has, motor on its end',
      means: 'The half-nut stays closed on the old screw and a motor turns the screw instead of the gears.',
      gains:
        'The cheapest way, nothing is cut, and it suits threads: a thread is cut in one direction, where play hardly shows.',
      wrong:
        'Play of 0.1 to 0.5 mm stays and grows as the half-nut wears. Shoulders come out to different lengths, curves that turn back show a step, and a half-nut dropped in at speed breaks.',
      skill: 2,
      needs: 'A coupler or belt on the screw, and its end float taken out.',
    },
    {
      id: 'sliding-screw',
      label: 'New sliding screw with twin nuts (trapezoidal)',
      means: 'A new precision screw with an ordinary thread and two nuts set against each other.',
      gains: 'It resists being pushed back, so the handwheel stays useful, and it does not mind chips.',
      wrong:
        'More than half of the motor is lost in friction: plan two to three times the torque. The nuts wear and are set again about once a year; stiff feed after that is the sign of overdoing it.',
      skill: 3,
      needs: 'A larger motor or a belt reduction, and the same room in the apron as a ball nut.',
    },
    {
      id: 'rack-pinion',
      label: 'Motor on the rack of the handwheel',
      means: 'A motor and gearbox turn the pinion that the handwheel turned.',
      gains: 'No screw to buy, and travel as long as the rack.',
      wrong:
        'Play of 0.2 to 0.6 mm, a ripple with every tooth, and a pinion that lifts the carriage. Lengths closer than 0.1 mm cannot be promised.',
      skill: 3,
      needs: 'A mount for gearbox and motor on the apron.',
    },
  ],
};

const carriageNut: Decision = {
  id: 'carriage-nut',
  subsystem: 'carriage',
  place: 'guide',
  name: 'Carriage screw and nut',
  ask: 'How good are the carriage screw and its nut?',
  why: 'The grade sets how true lengths are and how much play the nut has. Few small lathes can show the difference of the best grade.',
  thumb:
    'A rolled screw errs by about 0.05 mm in 300, which many controls can correct from a table. One plain nut has 0.02 to 0.07 mm of play; a preloaded one about none.',
  askWhen: ballOnCarriage,
  assume: ['rolled-single-nut', 'rolled-preloaded-nut', 'ground-preloaded-nut'],
  assumeWhy: 'Until you choose we plan with the ordinary grade, enough for lengths within 0.03 mm.',
  open: 'options',
  options: [
    {
      id: 'rolled-single-nut',
      label: 'Rolled screw, one nut (ordinary accuracy)',
      means: 'The common screw, its thread rolled into the bar, with a single nut.',
      gains: 'Cheap, and enough for lengths within 0.03 mm when you approach from one side.',
      wrong: 'Its play cannot be adjusted out. Shoulders cut in both directions differ by that play.',
      skill: 2,
    },
    {
      id: 'rolled-preloaded-nut',
      label: 'Rolled screw, nut without play',
      means: 'The same screw with a double nut or oversize balls, so that nothing is loose.',
      gains: 'Next to no play, so a length is the same from both sides.',
      wrong:
        'More drag, and a long nut that eats 30 to 40 mm of travel. The lost travel shows when the tailstock is in the way.',
      skill: 3,
      needs: 'Count the travel again with the longer nut.',
    },
    {
      id: 'ground-preloaded-nut',
      label: 'Ground screw, nut without play',
      means: 'A screw ground to size, as in industrial machines, with a preloaded nut.',
      gains: 'True to about 0.02 mm in 300 without any correction, and smooth.',
      wrong:
        'Wasted where bearings, bracket or saddle give way more than that. A small misalignment ruins it: one end of the travel feels tighter.',
      skill: 3,
      needs: 'A fixed end without play and careful lining up.',
    },
  ],
};

export const driveDecisions: readonly Decision[] = [carriageDrive, carriageNut];
