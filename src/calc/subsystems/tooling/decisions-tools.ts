import type { Decision, Option } from '../../core/decision.ts';

const holders: readonly Option[] = [
  {
    id: 'four-way-block',
    label: 'Keep the four-way block',
    means:
      'A square block that clamps four tools with set screws; shims under each tool bring it to centre height.',
    gains: 'Nothing to buy or fit, and it is stiff.',
    wrong:
      'Only one or two tools come back to place, within 0.03 to 0.1 mm, so you touch off again for every part. It shows as diameters that differ each time the block is turned.',
    skill: 1,
  },
  {
    id: 'quick-change-post',
    label: 'Quick-change post with ten holders',
    means: 'A post with a clamp, and a separate holder for each tool that drops on and locks.',
    gains: 'Each holder comes back within 0.01 to 0.03 mm, so its offset is typed once and stays good.',
    wrong:
      'The place shifts with how hard the lever is pulled, and with a chip behind the holder. It shows as odd jumps in size after a tool change.',
    skill: 1,
  },
  {
    id: 'gang-tools',
    label: 'Several tools in a row (gang tools)',
    means:
      'Small blocks bolted side by side on a slotted slide; the slide moves across to bring the next tool to the work.',
    gains: 'The fastest change there is and the truest, 0.005 to 0.01 mm, with nothing that has to index.',
    wrong:
      'Each tool takes about 35 mm of cross travel, so a 95 mm slide carries three tools and work of about 25 to 40 mm. A fourth tool runs into the work or out of travel.',
    skill: 3,
    needs: 'A flat slide with slots, and the tool count checked against the travel.',
  },
  {
    id: 'quick-change-and-rear-post',
    label: 'Quick-change post and a rear post',
    means:
      'The quick-change post in front, and a second post behind the work that holds an upside-down parting tool.',
    gains:
      'Parting from behind grabs and chatters less: the load presses the spindle into its bearings, and a blade that gives moves out of the cut. Its tool is always ready.',
    wrong:
      'The slide must travel past the centre far enough to reach, and the signs of that tool are turned round. A wrong sign shows in the first air cut, or in the chuck.',
    skill: 2,
    needs: 'Cross travel past the centre, and no motor behind the slide.',
  },
  {
    id: 'automatic-changer',
    label: 'Turret that changes tools by itself',
    means: 'A motor-driven turret with four to six tools, which lifts, turns and locks on command.',
    gains: 'Several tools in one program with nobody at the handle.',
    wrong:
      'A turn that does not lock is a crash. Chips in the face gear stop it from seating, it eats swing and height, and it looks perfect until one index fails.',
    skill: 4,
    needs: 'Three outputs and two inputs at the control, and a sensor that proves the lock.',
  },
];

const measuring: readonly Option[] = [
  {
    id: 'cut-and-measure',
    label: 'Cut, measure, type it in',
    means: 'Take a light cut, measure the diameter with a micrometer, and type what you read.',
    gains: 'Nothing to buy, and it is true under cutting load.',
    wrong:
      'It takes two to four minutes a tool and says nothing about the round of the tip, which shows on tapers and curves.',
    skill: 1,
    needs: 'A micrometer that you trust.',
  },
  {
    id: 'touch-plate',
    label: 'Touch plate or setter block',
    means: 'A block of known height wired to an input; the tool creeps up until it makes contact.',
    gains: 'Half a minute a tool, the same way each time.',
    wrong:
      'A chip between plate and tool is an error of its own thickness. A wire the wrong way round lets the tool drive on and break.',
    skill: 2,
    needs: 'One free input at the control.',
  },
  {
    id: 'centred-magnifier',
    label: 'Magnifier or camera on the centre line',
    means: 'A lens with cross hairs, held true to the spindle; you jog each tip to the cross.',
    gains: 'No contact, so it suits tiny boring bars and sharp threading tips.',
    wrong:
      'Seen at a slant, the tip reads wrong by hundredths (parallax). It shows when two tools disagree on one diameter.',
    skill: 2,
    needs: 'A mount that comes back to the same place.',
  },
];

export const toolDecisions: Readonly<Record<'holding' | 'offsets', Decision>> = {
  holding: {
    id: 'tool-holding',
    subsystem: 'tooling',
    place: 'guide',
    name: 'Tool holding',
    ask: 'What holds the tools?',
    why: 'A program knows each tool by where its tip is. It only works when every tool comes back to the same place.',
    thumb:
      'Aim for 0.02 mm on the diameter. Quick-change does 0.01 to 0.03, a four-way block 0.03 to 0.1, gang tools 0.005 to 0.01.',
    findOut:
      'Put an indicator on the tip of a clamped tool and set it to zero. Take the holder off and put it back ten times with the same pull. Write down the largest difference.',
    assume: [
      'quick-change-post',
      'four-way-block',
      'quick-change-and-rear-post',
      'gang-tools',
      'automatic-changer',
    ],
    assumeWhy:
      'Until you choose we plan with a quick-change post, which most lathes of this size end up with.',
    open: 'options',
    options: holders,
  },
  offsets: {
    id: 'tool-offsets',
    subsystem: 'tooling',
    place: 'guide',
    name: 'Tool offsets',
    ask: 'How will you find where each tool tip is?',
    why: 'Every tool needs two numbers and the round of its tip before its first cut. You will do this hundreds of times.',
    thumb:
      'Across: cut, measure, type the diameter. Along: touch a gauge block against the face. Two to four minutes a tool.',
    assume: ['cut-and-measure', 'touch-plate', 'centred-magnifier'],
    assumeWhy: 'Until you choose we plan with cutting and measuring, which needs nothing new.',
    open: 'options',
    options: measuring,
  },
};
