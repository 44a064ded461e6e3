import type { Decision } from '../../core/decision.ts';
import { screwsToCover } from './wired.ts';

const chipsAndCoolant: Decision = {
  id: 'chips-and-coolant',
  subsystem: 'wiring',
  place: 'guide',
  name: 'Chips and coolant',
  ask: 'Will you cut dry, with mist or with flood?',
  why: 'Coolant gets everywhere that is not sealed. It decides housing, sensors and covers.',
  thumb: 'Dry cutting or oil from a brush suits most small converted lathes.',
  assume: ['dry-or-brushed', 'mist-or-air', 'flood'],
  assumeWhy: 'Until you choose we plan with dry cutting and a brush.',
  open: 'options',
  options: [
    {
      id: 'dry-or-brushed',
      label: 'Dry, or oil from a brush',
      means: 'No pump; chips are brushed or sucked away, never touched.',
      gains: 'Cheap and clean electrics.',
      wrong: 'Long chips wrap round the work while nobody clears them.',
      skill: 2,
    },
    {
      id: 'mist-or-air',
      label: 'Mist or an air jet',
      means: 'A fine spray or air aimed at the tool.',
      gains: 'Clears chips from bores and grooves.',
      wrong: 'You breathe it, and chips fly into the ways. A haze under the lamp is the sign.',
      skill: 2,
      needs: 'A compressor, ventilation and eye protection.',
    },
    {
      id: 'flood',
      label: 'Flood, inside an enclosure',
      means: 'A pump, a tray, a tank and walls all round.',
      gains: 'Better finish and tool life in steel.',
      wrong: 'Leaks into screws, motors and switches. Rust on the screw ends is the first sign.',
      skill: 3,
      needs: 'Sheet metal work, sealed sensors, the cabinet away from the splash.',
    },
  ],
};

const wayCovers: Decision = {
  id: 'way-covers',
  subsystem: 'wiring',
  place: 'guide',
  name: 'Covers over ways and screws',
  ask: 'What keeps chips off the ways and screws?',
  why: 'One hard chip in a ball nut ends its life. Covers also take length from the travel.',
  thumb: 'Bellows are 1.25 times the travel when open and about a sixth of it when shut.',
  findOut:
    'Measure the free length at each end of the slide with it at the end of travel. Write down millimetres.',
  askWhen: screwsToCover,
  assume: ['bellows', 'wipers-only', 'spring-covers'],
  assumeWhy: 'Until you choose we plan with wipers and a bellows over each screw.',
  open: 'options',
  options: [
    {
      id: 'bellows',
      label: 'Bellows and wipers',
      means: 'Folded covers that open and close with the slide, and felts on the ways.',
      gains: 'Keeps chips off for little money.',
      wrong:
        'Hot chips burn holes, and the folded stack eats travel. Stiff folds show as a slide that lags at the end.',
      skill: 2,
    },
    {
      id: 'wipers-only',
      label: 'Wipers only',
      means: 'Felt or rubber lips on the saddle and the nut.',
      gains: 'No travel lost.',
      wrong: 'The screw lies open: brush it every day. A gritty feel when turned by hand is the sign.',
      skill: 1,
    },
    {
      id: 'spring-covers',
      label: 'Spiral steel covers over each screw',
      means: 'A steel ribbon that winds out like a spring round the screw.',
      gains: 'Hot chips do not hurt it.',
      wrong: 'Needs room round the screw, jams when dry, and a freed spring cuts fingers.',
      skill: 3,
      needs: 'Room of two to three times the screw diameter.',
    },
  ],
};

const lubrication: Decision = {
  id: 'lubrication',
  subsystem: 'wiring',
  place: 'guide',
  name: 'Lubrication',
  ask: 'How do the ways and nuts get their oil?',
  why: 'A program moves the slides more in a day than hands did in a week. Even friction keeps sizes even.',
  thumb: 'Ball nuts want oil or grease every 20 to 50 hours, ways every session.',
  assume: ['oil-can', 'one-shot-oiler'],
  assumeWhy: 'Until you choose we plan with an oil can and a note on the machine card.',
  open: 'options',
  options: [
    {
      id: 'oil-can',
      label: 'Oil can',
      means: 'You oil each point before work.',
      gains: 'Free.',
      wrong: 'It is forgotten: a dry nut and a slide that jerks at slow feed are the signs.',
      skill: 1,
    },
    {
      id: 'one-shot-oiler',
      label: 'One pull oils everything',
      means: 'A hand pump with thin lines to each way and nut, and a metering fitting at each.',
      gains: 'The same film every day, so the same size every day.',
      wrong:
        'A hole drilled in the wrong place cannot be undone; chips cut lines. A dry patch on a way is the sign.',
      skill: 3,
      needs: 'Holes drilled into ways and nuts while the slides are off.',
    },
  ],
};

export const careDecisions: readonly Decision[] = [chipsAndCoolant, wayCovers, lubrication];
