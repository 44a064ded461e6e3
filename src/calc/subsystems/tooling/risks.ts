import { any, is } from '../../core/condition.ts';
import type { Risk } from '../../core/risk.ts';

export const risks: readonly Risk[] = [
  {
    id: 'bar-whip',
    subsystem: 'tooling',
    name: 'Bar bends and strikes behind the headstock',
    cause: 'Long bar turns outside the spindle with no tube round it.',
    effect: 'The bar folds over in a second and hits whatever is near. People have died of it.',
    sign: 'A hum or shake that grows with speed.',
    prevent:
      'Nothing turns behind the headstock unless it is shorter than three diameters or in a fixed tube. Barrier behind the machine; lower speed with long bar.',
    chance: [0.005, 0.02, 0.05],
    money: [0, 100, 400],
    hours: [0, 4, 12],
    kind: 'mechanics',
    stage: 'prove',
    when: any(
      is('bar-feed', 'bar-against-stop', 'bar-puller'),
      is('work-holding', 'spring-collets', 'lever-collets', 'power-chuck'),
    ),
    levers: [
      {
        when: is('bar-feed', 'cut-blanks'),
        by: 0.5,
        why: 'sawn blanks leave nothing behind the headstock, though collets tempt',
      },
      { when: is('work-holding', 'power-chuck'), by: 1.6, why: 'nobody stands beside it to hear the hum' },
    ],
    injury: true,
  },
];
