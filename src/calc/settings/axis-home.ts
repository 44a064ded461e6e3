import type { Look } from '../core/figure.ts';
import { assumed } from '../core/quantity.ts';
import { homeSpread } from '../subsystems/wiring/homing.ts';
import type { Slide } from './axis-train.ts';
import { blank, planned, type Setting, settled } from './setting.ts';

const practice = 'common practice, no source';
const perMinute = (mm: number) => assumed(mm / 60_000, 'm/s', practice);

function seeking(look: Look, slide: Slide): Setting[] {
  return [
    blank(slide, `${slide}-home-direction`, 'Direction of homing', {
      how: slide === 'cross' ? 'Away from the work.' : 'Towards the tailstock.',
    }),
    planned(slide, `${slide}-home-seek-speed`, 'Speed to find the home switch', perMinute(300), {
      how: 'Slow enough that the slide stops before the end of travel.',
      ...radius(slide),
    }),
    planned(slide, `${slide}-home-latch-speed`, 'Speed of the second, slow touch', perMinute(60), {
      how: '50 to 100 mm a minute, after backing off 2 mm.',
      ...radius(slide),
    }),
    blank(slide, `${slide}-home-offset`, 'Distance from the switch to machine zero', {
      how: 'Home ten times with an indicator on the slide: the spread says whether the figure is worth anything.',
      ...radius(slide),
    }),
    planned(
      slide,
      `${slide}-home-spread`,
      'Spread of ten homings, at most',
      assumed(homeSpread[slide], 'm', practice),
      {
        how: 'Ten times warm and ten times cold. Write down the largest difference.',
        ...radius(slide),
      },
    ),
    ...(look.chosen('home-limits', 'home-and-motor-mark')
      ? [
          blank(slide, `${slide}-mark-distance`, 'Turn of the motor between switch and mark', {
            how: 'Half a turn. Near to nothing or to a whole turn, home is now and then wrong by a turn: shift the switch.',
          }),
        ]
      : []),
  ];
}

/** What the slide itself moves across is a radius. */
const radius = (slide: Slide): Pick<Setting, 'diameterOrRadius'> =>
  slide === 'cross' ? { diameterOrRadius: 'radius' } : {};

function limits(slide: Slide): Setting[] {
  const shown: Pick<Setting, 'diameterOrRadius'> = slide === 'cross' ? { diameterOrRadius: 'diameter' } : {};
  const inside = 'Two millimetres of travel inside the switch or the hard stop.';
  return [
    blank(
      slide,
      `${slide}-limit-low`,
      slide === 'cross' ? 'Nearest position to the centre' : 'Nearest position to the chuck',
      {
        how:
          slide === 'cross'
            ? `${inside} Past the centre no further than the tools need; the control shows a diameter.`
            : `${inside} Note the radius of the chuck jaws beside it.`,
        ...shown,
      },
    ),
    blank(slide, `${slide}-limit-high`, 'Furthest position', {
      how: `${inside} Nothing at the back of the slide touches there.`,
      ...shown,
    }),
    blank(slide, `${slide}-switch-sense`, 'Switches: open or closed when all is well, and filter time', {
      how: 'Closed when all is well, so that a broken wire stops. 5 to 10 ms of filter: run the spindle and watch that no limit flickers.',
    }),
  ];
}

/** How a slide finds its place, and where it must not go. */
export function homeSettings(look: Look, slide: Slide): Setting[] {
  if (look.chosen('home-limits', 'no-homing'))
    return [
      settled(
        slide,
        `${slide}-zero`,
        'How zero is found',
        'touched off after every switch-on',
        'No home switch in this plan: without it there is no fence for fast moves.',
      ),
    ];
  return [...seeking(look, slide), ...limits(slide)];
}
