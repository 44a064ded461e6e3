import { atLeastLimit, atMost, between, type CheckRule } from '../../core/check.ts';
import type { Look } from '../../core/figure.ts';
import { sumOf } from '../../core/steps.ts';
import { isDriven, type Slide, slideWords, usual } from './axis.ts';
import { fitsDrive, screwQuestions } from './checks-missing.ts';

const driveOf: Readonly<Record<Slide, string>> = {
  carriage: 'carriage-coupling',
  cross: 'cross-motor-place',
};

const mesh =
  (slide: Slide): CheckRule =>
  (look) => {
    if (!look.figure(`${slide}-belt-teeth`)) return undefined;
    return atLeastLimit({
      id: `${slide}-belt-mesh`,
      label: `Teeth in mesh on the small pulley, ${slideWords[slide]}`,
      value: look.figure(`${slide}-belt-mesh`),
      limit: usual(6, '1', 'with fewer the belt carries less than its rating'),
      remedy:
        'A longer belt, or pulleys nearer to each other in size. Leave a slot to tighten it, three hundredths of the distance each way.',
      decisions: [driveOf[slide]],
    });
  };

/** Fewest teeth that a 5 mm belt likes at a speed, rev/s: it is bent sharper and oftener on a small pulley. */
const fewestTeeth = (speed: number): number => {
  if (speed * 60 <= 900) return 18;
  return speed * 60 <= 1200 ? 20 : 24;
};

const pulleySize =
  (slide: Slide): CheckRule =>
  (look) => {
    const value = look.figure(`${slide}-motor-pulley-teeth`);
    const speed = look.figure(`${slide}-motor-speed-rapid`);
    if (!value || !speed) return undefined;
    return atLeastLimit({
      id: `${slide}-pulley-teeth`,
      label: `Size of the motor pulley, ${slideWords[slide]}`,
      value,
      limit: usual(
        fewestTeeth(speed.value),
        '1',
        'fewest teeth for a 5 mm belt at this speed; common practice',
      ),
      remedy: 'Larger pulleys in the same proportion with the next longer belt, or a slower rapid.',
      decisions: [driveOf[slide]],
    });
  };

const places = {
  motor: { shaft: 'motor-shaft', bore: 'motor-bore', words: 'motor shaft' },
  screw: { shaft: 'screw-end', bore: 'screw-bore', words: 'end of the screw' },
} as const;

const missing = (look: Look, ids: readonly string[]) => ids.filter((id) => !look.measured(id));

const fit =
  (slide: Slide, place: keyof typeof places): CheckRule =>
  (look) => {
    if (!fitsDrive(look, slide)) return undefined;
    const { words, ...ids } = places[place];
    const shaft = look.measured(`${slide}-${ids.shaft}`);
    const needs = missing(look, [`${slide}-${ids.shaft}`, `${slide}-${ids.bore}`]);
    return between({
      id: `${slide}-${place}-fit`,
      label: `Bore on the ${words}, ${slideWords[slide]}`,
      value: look.measured(`${slide}-${ids.bore}`),
      limitLow: shaft,
      limit: sumOf({ shaft, play: usual(30e-6, 'm', 'a sliding fit under a clamp hub; common practice') }),
      remedy:
        needs.length > 0
          ? 'Needs shaft and bore, both measured, before anything is ordered. Hold the pulley by a clamp hub or a key, never by a grub screw on bare round.'
          : 'Order the pulley or coupling with the bore of the shaft; a smaller bore may be opened out, a larger one is scrap.',
      ...(needs.length > 0 && { needs }),
      testWhen: 'before pulleys or couplings are ordered, and again when they arrive',
      decisions: [driveOf[slide], 'motor-size'],
    });
  };

/** Give under the pull of the test: measured once it runs, expected from the springs until then. */
const give =
  (slide: Slide): CheckRule =>
  (look) => {
    if (!isDriven(look, slide)) return undefined;
    const value = look.measured(`${slide}-give`) ?? look.figure(`${slide}-give-expected`);
    return atMost({
      id: `${slide}-give`,
      label: `Give under 200 N, ${slideWords[slide]}`,
      value,
      limit: usual(20e-6, 'm', 'more shows as chatter and as steps in a profile; common practice'),
      comfort: 1.25,
      remedy: value
        ? 'Look for the softest link: thin brackets, bearings with play, a long thin screw. Stiffen that one first.'
        : 'Needs the give, measured with an indicator and a spring scale while the motor holds.',
      ...(!value && { needs: [`${slide}-give`] }),
      testWhen: 'once the motor holds the slide: pull with 200 N both ways against an indicator',
      decisions: screwQuestions[slide],
    });
  };

/** Belt, bores and stiffness of one slide. */
export const fitChecks = (slide: Slide): readonly CheckRule[] => [
  mesh(slide),
  pulleySize(slide),
  fit(slide, 'motor'),
  fit(slide, 'screw'),
  give(slide),
];
