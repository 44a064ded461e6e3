import type { Decision } from '../../core/decision.ts';

const condition: Decision = {
  id: 'condition',
  subsystem: 'purpose',
  place: 'guide',
  name: 'Condition of the lathe',
  ask: 'What condition is the lathe in?',
  why: 'A hand on the wheel makes up for wear; a motor repeats it. Money for electronics does not mend a worn slide.',
  thumb: 'Measure first: wear of the bed near the chuck, snugness of the slides (gibs), play of the spindle.',
  findOut:
    'Twenty minutes with an indicator (reads hundredths of a millimetre) on the carriage. Bed: run it along an unworn face from tailstock to chuck; write down the change. Spindle: lever the nose up with a bar and about 200 N (20 kg on a scale); write down how far it lifts. Slides: pull carriage and cross slide up with 150 N; write down the lift. Under 0.02, 0.01 and 0.03 mm is good.',
  assume: ['not-measured', 'measured-good', 'slides-need-adjusting', 'spindle-bearings-too', 'worn-bed'],
  assumeWhy: 'Until it is measured we plan as if nothing but the survey were needed.',
  open: 'assumed',
  options: [
    {
      id: 'not-measured',
      label: 'Not measured yet',
      means: 'You believe it is sound, but no indicator has said so.',
      gains: 'Nothing to do today; the survey is the second task of the plan.',
      wrong: 'Wear comes to light after the money is spent.',
      skill: 1,
    },
    {
      id: 'measured-good',
      label: 'Measured, and good',
      means: 'Bed wear near the chuck under 0.02 mm, spindle play under 0.01 mm, slides lift under 0.03 mm.',
      gains: 'The survey is mostly done, and the later figures can be trusted.',
      wrong: 'An old measurement, or one taken with dirty ways, misleads.',
      skill: 2,
      needs: 'Indicator and a test bar.',
    },
    {
      id: 'slides-need-adjusting',
      label: 'Slides need fitting and setting',
      means: 'The adjustable strips (gibs) are loose, bent or rough; lapping and new strips put it right.',
      gains: 'Cures the jerky slow feed (stick-slip) that is often blamed on weak motors.',
      wrong:
        'Lapped too far, the slide is loose in the middle and tight at the ends. It shows as a pull that changes along the travel.',
      skill: 3,
      needs: 'Marking blue, lapping compound or a scraper.',
    },
    {
      id: 'spindle-bearings-too',
      label: 'Slides, and spindle bearings too',
      means: 'The spindle rumbles, or lifts more than 0.03 mm.',
      gains: 'Better finish, and the speeds the lathe was made for.',
      wrong:
        'Wrong preload: the headstock runs hot, or it chatters. The headstock has to be lined up again afterwards.',
      skill: 4,
      needs: 'Puller, gentle heat, a clean bench.',
    },
    {
      id: 'worn-bed',
      label: 'Bed worn over 0.05 mm, or cracked',
      means: 'The dip near the chuck, or a crack in bed or saddle, is past what setting can cure.',
      gains: 'You know before spending.',
      wrong: 'A taper that no setting removes: the wear changes along the bed, and it changes with the cut.',
      skill: 5,
      needs: 'Regrinding, or another bed.',
    },
  ],
};

const handUse: Decision = {
  id: 'hand-use',
  subsystem: 'purpose',
  place: 'guide',
  name: 'Use by hand',
  ask: 'How much turning by hand must survive?',
  why: 'Turning by hand is what people miss most afterwards. It is cheap to keep only if it is chosen first.',
  thumb: 'Ask yourself what you will do at nine in the evening when you need one bush.',
  assume: ['electronic-handwheels', 'hand-cranks', 'fully-reversible', 'no-hand-use'],
  assumeWhy: 'Electronic wheels keep most of the feel for little money.',
  open: 'options',
  options: [
    {
      id: 'no-hand-use',
      label: 'None: jog with buttons',
      means: 'The slides move by motor only, started from keys.',
      gains: 'The simplest machine to build.',
      wrong:
        'One spacer to face means switching on, homing and offsets. Regret is common, and it shows in how often you say "just quickly".',
      skill: 2,
    },
    {
      id: 'electronic-handwheels',
      label: 'Electronic handwheels that drive the motors',
      means: 'A pendant, or two wheels on the panel, that send pulses; the motors follow.',
      gains: 'Close to turning by hand, and the soft limits still hold.',
      wrong: 'Lag or a wrong step size feels bad, and cheap pendants lose counts.',
      skill: 2,
      needs: 'A spare counter input at the control.',
    },
    {
      id: 'hand-cranks',
      label: 'Hand cranks on the motor shafts, drives off',
      means:
        'Motors with a shaft at both ends carry a crank. It whirls under power, so it folds away or comes off.',
      gains: 'Works with the power off and without a screen.',
      wrong:
        'A ball screw does not hold by itself: with drives off the slide creeps under the cut. A whirling crank breaks fingers.',
      skill: 2,
      needs: 'Cranks that fold or lift off, and a way to hold the slide.',
    },
    {
      id: 'fully-reversible',
      label: 'Everything bolts off again, nothing cut',
      means: 'Brackets clamp to what is there; the original screw, nut and apron are kept in a box.',
      gains: 'You can go back, or sell it as a lathe.',
      wrong:
        'A thinner cross screw, the old thrust collar and more brackets: softer, and 8 to 30 hours more.',
      skill: 3,
      needs: 'No hole in any casting.',
    },
  ],
};

const drivenAxes: Decision = {
  id: 'driven-axes',
  subsystem: 'purpose',
  place: 'guide',
  name: 'What gets a motor',
  ask: 'Which movements get a motor?',
  why: 'Each driven slide brings a screw, a motor, a drive, brackets and wiring. One may be all you need.',
  thumb:
    'Threads and long cuts: the carriage alone. Profiles and batches: both slides. Holes by program: the tailstock or a drill in the post.',
  assume: ['both-slides', 'carriage-only', 'both-and-tailstock', 'cross-slide-only'],
  assumeWhy: 'Both slides is what is usually meant by a CNC lathe.',
  open: 'options',
  options: [
    {
      id: 'carriage-only',
      label: 'Carriage only',
      means: 'The slide along the bed (Z) gets a motor; the tool is moved in and out by hand.',
      gains: 'Threads, feeds and stops at a shoulder for about a third of the work.',
      wrong: 'No tapers, curves or diameters by program.',
      skill: 2,
    },
    {
      id: 'both-slides',
      label: 'Carriage and cross slide',
      means: 'Both slides (Z and X) get motors.',
      gains: 'Diameters, tapers, curves and threads by program.',
      wrong:
        'The cross slide is the tightest place on the machine, and its errors show twice on the diameter.',
      skill: 3,
    },
    {
      id: 'cross-slide-only',
      label: 'Cross slide only',
      means: 'The slide that moves the tool in and out (X) gets a motor; the carriage stays by hand.',
      gains: 'Power facing and parting, and repeated diameters.',
      wrong: 'No threads, and nothing along the bed.',
      skill: 3,
    },
    {
      id: 'both-and-tailstock',
      label: 'Both slides and the tailstock',
      means: 'A third motor pushes the quill of the tailstock.',
      gains: 'Holes drilled by the program while the tool post keeps its tools.',
      wrong:
        'A third set of motor, drive and mount, 12 to 50 hours more, and a tailstock that must be locked in one place.',
      skill: 4,
    },
  ],
};

export const useDecisions: readonly Decision[] = [condition, handUse, drivenAxes];
