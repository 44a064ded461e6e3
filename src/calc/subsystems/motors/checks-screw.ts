import { atLeastLimit, atMost, type Check, type CheckRule } from '../../core/check.ts';
import type { Look } from '../../core/figure.ts';
import { productOf } from '../../core/steps.ts';
import { isDriven, type Slide, slideWords, usual } from './axis.ts';
import { hasScrew, judged, screwQuestions } from './checks-missing.ts';

/** A check that arises where there is a screw that we know. */
const onScrew =
  (
    slide: Slide,
    of: (look: Look, figure: (name: string) => ReturnType<Look['figure']>) => Check | undefined,
  ): CheckRule =>
  (look) =>
    isDriven(look, slide) && hasScrew(look, slide)
      ? of(look, (name) => look.figure(`${slide}-${name}`))
      : undefined;

const whirl = (slide: Slide): CheckRule =>
  onScrew(slide, (_, figure) =>
    atLeastLimit({
      id: `${slide}-whirl`,
      label: `Speed at which the screw whips, ${slideWords[slide]}`,
      value: figure('whirl-speed'),
      limit: figure('screw-speed-rapid'),
      comfort: 1.25,
      remedy: 'Slow the rapid, support the far end, or take a thicker screw or a longer lead.',
      decisions: screwQuestions[slide],
    }),
  );

const thicker =
  'A thicker screw, or its far end held as well; half of the load that bends it is kept back already.';
const turnDown =
  'Turn the motor current or the torque limit down, or take a thicker screw: otherwise a crash may bend it.';
const strongerEnd =
  'A larger pair of bearings made to take push, or a lower current or torque limit in the drive. Nut bracket and its bolts take the same push.';

const buckling = (slide: Slide): CheckRule =>
  onScrew(slide, (look, figure) =>
    atLeastLimit({
      id: `${slide}-buckling`,
      label: `Screw against the usable push, ${slideWords[slide]}`,
      comfort: 1.5,
      ...judged(look, slide, thicker, { value: figure('buckling-load'), limit: figure('thrust') }),
      decisions: screwQuestions[slide],
    }),
  );

const whole = usual(2, '1', 'the whole load that bends it; half was kept back');

/** A crash: the whole of what bends the screw against the most that the motor gives. */
const stall = (slide: Slide): CheckRule =>
  onScrew(slide, (look, figure) =>
    atLeastLimit({
      id: `${slide}-buckling-stall`,
      label: `Push that bends the screw, against a slide run into something, ${slideWords[slide]}`,
      comfort: 2,
      ...judged(look, slide, turnDown, {
        value: productOf('N', { kept: figure('buckling-load'), whole }),
        limit: figure('stall-thrust'),
      }),
      decisions: screwQuestions[slide],
    }),
  );

const endBearing = (slide: Slide): CheckRule =>
  onScrew(slide, (look, figure) =>
    atLeastLimit({
      id: `${slide}-end-bearing`,
      label: `Bearing that takes the push, ${slideWords[slide]}`,
      comfort: 1.1,
      ...judged(look, slide, strongerEnd, { value: figure('end-rating'), limit: figure('stall-thrust') }),
      decisions: screwQuestions[slide],
    }),
  );

const balls = (slide: Slide): readonly CheckRule[] => [
  onScrew(
    slide,
    (_, figure) =>
      figure('ball-circle') &&
      atMost({
        id: `${slide}-ball-speed`,
        label: `Speed of the balls, ${slideWords[slide]}`,
        value: figure('screw-speed-rapid'),
        limit: figure('ball-speed-limit'),
        remedy: 'Slow the rapid or take a longer lead: balls that run too fast break out their return.',
        decisions: screwQuestions[slide],
      }),
  ),
  onScrew(
    slide,
    (_, figure) =>
      figure('dynamic-rating') &&
      atLeastLimit({
        id: `${slide}-screw-life`,
        label: `Life of the ball screw, ${slideWords[slide]}`,
        value: figure('screw-life'),
        limit: usual(2000, 'h', 'four hours a week for ten years, all of it the heaviest cut'),
        comfort: 1.5,
        remedy:
          'A thicker screw with a higher load rating, or lighter cuts. Dirt ends a screw long before its load does: keep the wipers.',
        decisions: screwQuestions[slide],
      }),
  ),
];

const length = (slide: Slide): CheckRule =>
  onScrew(slide, (look, figure) => {
    if (!figure('screw-thread')) return undefined;
    const bought = look.measured(`${slide}-screw-bought`);
    const short = 'Too short cannot be mended: ask for another, or give up that much travel.';
    return atLeastLimit({
      id: `${slide}-screw-length`,
      label: `Length of the screw, ${slideWords[slide]}`,
      value: bought,
      limit: figure('screw-length'),
      remedy: bought
        ? `${short} Too long is sawn off at the floating end, and that end turned again.`
        : 'Needs the length of the screw you have or are offered. Draw it first, and have a second person add up thread and ends.',
      ...(!bought && { needs: [`${slide}-screw-bought`] }),
      testWhen: 'before the screw is ordered or cut',
      decisions: [...screwQuestions[slide], 'way-covers'],
    });
  });

/** What the screw of one slide, its balls and its bearing stand. */
export const screwChecks = (slide: Slide): readonly CheckRule[] => [
  whirl(slide),
  buckling(slide),
  stall(slide),
  endBearing(slide),
  ...balls(slide),
  length(slide),
];
