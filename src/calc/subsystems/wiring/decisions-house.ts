import type { Decision } from '../../core/decision.ts';

const cable: Decision = {
  id: 'cable',
  subsystem: 'wiring',
  place: 'guide',
  name: 'Cable and connectors',
  ask: 'Which cable and connectors?',
  why: 'Much of the time of a first start goes into loose plugs and noise. Cable is where both come from.',
  thumb:
    'Screened, 150 mm away from spindle-drive leads, crossing them at right angles, all earths to one bar.',
  findOut:
    'Lay a string from the cabinet along the bed to each motor and switch. Write down the lengths, slides at the far end.',
  assume: ['screened-cable', 'moulded-leads', 'unscreened-wire'],
  assumeWhy: 'Until you choose we plan with screened cable and plugs that lock.',
  open: 'options',
  options: [
    {
      id: 'screened-cable',
      label: 'Screened cable, plugs that lock',
      means: 'Cable with a braid round the wires, round locking plugs, crimped ends, a label on each wire.',
      gains: 'Works beside a spindle drive, and the lathe can be moved.',
      wrong:
        'Takes the time it takes. A screen left hanging at a drive shows as counts that jump when the spindle runs.',
      skill: 3,
      needs: 'Crimpers and a soldering iron.',
    },
    {
      id: 'moulded-leads',
      label: 'Ready-made motor leads, the rest screened',
      means: 'Motor and encoder leads bought with plugs on; sensors are wired as usual.',
      gains: 'Halves the cable work.',
      wrong: 'Fixed lengths: one that is too short stretches at the far end. Order the next longer.',
      skill: 2,
    },
    {
      id: 'unscreened-wire',
      label: 'Plain wire, hobby plugs',
      means: 'Loose wires and open plugs as used in models.',
      gains: 'A hundred or two less on the bill, and quick to lay.',
      wrong: 'False limits, lost counts, plugs that shake loose: the saved hours come back in fault finding.',
      skill: 2,
      needs: 'A quiet spindle motor; never with a spindle drive or servos.',
    },
  ],
};

const housing: Decision = {
  id: 'housing',
  subsystem: 'wiring',
  place: 'guide',
  name: 'Electronics housing',
  ask: 'What do the electronics live in?',
  why: 'Chips conduct, and mains terminals kill. The housing keeps the two apart from each other and from you.',
  thumb: 'Depth of the largest drive plus 60 mm, 100 mm of free air above drives, at most 45 °C inside.',
  findOut:
    'Lay the parts out on paper at full size with 50 mm between rows. Write down width, height and depth.',
  assume: ['steel-cabinet', 'plastic-box', 'open-board'],
  assumeWhy: 'Until you choose we plan with a steel cabinet that can be locked.',
  open: 'options',
  options: [
    {
      id: 'steel-cabinet',
      label: 'Steel cabinet with a filtered fan',
      means: 'A metal cupboard with a mounting plate, earthed, with a fan and filters.',
      gains: 'Keeps noise in and chips out; can be locked.',
      wrong: 'Weighs 10 to 20 kg. A clogged filter shows as faults on warm days.',
      skill: 3,
      needs: 'Hole saw or punch, and a wall or stand that carries it.',
    },
    {
      id: 'plastic-box',
      label: 'Plastic or hobby box',
      means: 'A light box for supply, drives and control.',
      gains: 'Light, easy to cut.',
      wrong: 'No screening and hot inside. Drives that switch off after an hour are the sign.',
      skill: 2,
      needs: 'No spindle drive inside.',
    },
    {
      id: 'open-board',
      label: 'Open board, sealed adapters only',
      means: 'Everything screwed to a board; nothing on it carries mains.',
      gains: 'Free and easy to reach.',
      wrong:
        'One chip across two terminals ends a drive. Open-frame supplies have live screws and do not belong here.',
      skill: 1,
      needs: 'Every supply a sealed plug-in adapter.',
      incomplete: 'Every motor supply in this plan has live mains terminals; they belong behind a cover.',
    },
  ],
};

const supplyCircuit: Decision = {
  id: 'supply-circuit',
  subsystem: 'wiring',
  place: 'guide',
  name: 'Mains circuit',
  ask: 'Which outlet feeds the converted lathe?',
  why: 'Spindle, drives and computer together draw more than the lathe did. A dip resets the control in the middle of a cut.',
  thumb:
    'A 0.75 kW spindle on a drive makes the machine draw 16 to 18 A at 120 V and about 9 A at 230 V; the plate of the drive rules.',
  findOut:
    'Read the amps on the breaker and on the plates of drive and supplies, and see what else hangs on that circuit. Write down both sums. New circuits are work for an electrician.',
  assume: ['existing-outlet', 'new-circuit'],
  assumeWhy: 'Until you choose we plan with the outlet you have, and check the current against it.',
  open: 'options',
  options: [
    {
      id: 'existing-outlet',
      label: 'The outlet that is there',
      means: 'The lathe stays on the circuit it has now.',
      gains: 'No waiting and no bill.',
      wrong:
        'Shared with a compressor it dips when that starts: a control that resets is the sign. A hot plug is a stop sign.',
      skill: 1,
      needs: 'The machine draws at most 0.8 of the breaker.',
    },
    {
      id: 'new-circuit',
      label: 'A new circuit, put in by an electrician',
      means: 'A line of its own, often 230 V, with the right protection for drives.',
      gains: 'No dips, room for a larger spindle drive.',
      wrong: 'Days or weeks of waiting, and a price that depends on the distance to the board.',
      skill: 1,
      needs: 'An electrician who follows the local code.',
    },
  ],
};

export const houseDecisions: readonly Decision[] = [cable, housing, supplyCircuit];
