import { asked } from '../../core/condition.ts';
import type { Decision } from '../../core/decision.ts';

const apron: Decision = {
  id: 'apron',
  subsystem: 'carriage',
  place: 'guide',
  name: 'Apron',
  ask: 'What happens to the apron and its gears?',
  why: 'The apron, the box with the half-nut under the front of the saddle, stands where a new nut wants to be. Its gears can jam or be driven backwards.',
  thumb:
    'If the apron stays, take the rack pinion out of mesh: a handwheel flung round by a fast move breaks fingers.',
  findOut:
    'Look up under the apron with a torch. Measure the room between its inside and the screw line, and how thick its walls are. Write down which bolts hold it to the saddle.',
  askWhen: asked('carriage-drive'),
  assume: ['strip-apron', 'replace-apron', 'keep-apron'],
  assumeWhy:
    'Until you choose we plan to empty the casting and bolt the nut to it: its bolts and its line are right already.',
  open: 'options',
  options: [
    {
      id: 'keep-apron',
      label: 'Keep it whole, taken out of mesh',
      means:
        'Everything stays inside; the half-nut and the pinion are set so that they cannot touch anything.',
      gains: 'Everything can go back, and with a rear screw the hand feed lives.',
      wrong: 'Drag, a handwheel that spins by itself, and one day a half-nut closed on a moving screw.',
      skill: 2,
      needs: 'A screw at the back, or the old lead screw; crank handle off.',
    },
    {
      id: 'strip-apron',
      label: 'Keep the casting, take the insides out',
      means: 'Half-nut and gears come out, and the nut of the new screw bolts to the empty box.',
      gains: 'The old bolts and the old line are used again.',
      wrong:
        'The wall may be thin or at an angle. If the nut is not shimmed square, the screw binds near the chuck. Drilled, it does not go back.',
      skill: 3,
      needs: 'Drilling and tapping the casting, shims and dowels.',
    },
    {
      id: 'replace-apron',
      label: 'Replace it with a plate',
      means: 'The apron goes into a box, and a plate or bracket takes its place.',
      gains: 'Stiff and tidy, with room for the nut and oil lines; the old apron can go back.',
      wrong:
        'The saddle bolts alone may not hold it square: without dowels it shifts under load, and play seems to come and go.',
      skill: 3,
      needs: 'A mill or a plate cut outside.',
    },
  ],
};

const oldFeeds: Decision = {
  id: 'old-feeds',
  subsystem: 'carriage',
  place: 'guide',
  name: 'Old feed gears',
  ask: 'What happens to the old feed gears and locks?',
  why: 'Change gears, feed shaft and half-nut lever can be driven backwards by the new motor. A forgotten carriage lock stalls it.',
  thumb:
    'Anything that can still be engaged will be, one evening. Take it out, or fix it so that a tool is needed to engage it.',
  findOut:
    'Turn the spindle by hand with every lever in turn. Write down what still moves: change gears, gearbox, feed shaft, cross feed, half-nut, and where the lock of the carriage is.',
  askWhen: asked('carriage-drive'),
  assume: ['remove-old-feeds', 'disable-old-feeds', 'leave-old-feeds'],
  assumeWhy: 'Until you choose we plan to take them off and box them: what is not there cannot be engaged.',
  open: 'options',
  options: [
    {
      id: 'leave-old-feeds',
      label: 'Leave them as they are',
      means: 'Levers, gearbox and lock stay in working order beside the new drive.',
      gains: 'No work, and the lathe looks as it did.',
      wrong:
        'A lever knocked at the wrong moment drives the gears backwards. It shows as a bang, a stall, or teeth in the tray.',
      skill: 1,
    },
    {
      id: 'disable-old-feeds',
      label: 'Fix them out of mesh',
      means: 'They stay on the machine, with levers pinned or gears taken off their shafts.',
      gains: 'Little work, and the way back takes an hour.',
      wrong: 'Still drags and collects chips, and a pin can be pulled by somebody who does not know.',
      skill: 2,
      needs: 'A label at each lever.',
    },
    {
      id: 'remove-old-feeds',
      label: 'Take them off and box them',
      means: 'Gearbox, feed shaft and brackets come off, are labelled and kept; oil holes are plugged.',
      gains:
        'Nothing left to engage, room for the motor, and a shaft with one turn for each of the spindle may be free for a sensor.',
      wrong: 'An oil way left open empties the headstock; a missing spacer lets a shaft walk.',
      skill: 2,
      needs: 'Bags, labels, photographs, plugs.',
    },
  ],
};

export const apronDecisions: readonly Decision[] = [apron, oldFeeds];
