import { all, is, not } from '../../core/condition.ts';
import type { Decision } from '../../core/decision.ts';

const orderOfWork: Decision = {
  id: 'order-of-work',
  subsystem: 'approach',
  place: 'guide',
  name: 'Order of work',
  ask: 'All at once, in stages, or electrics first?',
  why: 'Stages end with a working lathe each time. All at once takes the fewest hours and keeps the lathe apart the longest.',
  thumb: 'Carriage first, for threads and power feed; then the spindle and its sensor; then the cross slide.',
  assume: ['all-at-once', 'in-stages', 'bench-electrics-first'],
  assumeWhy: 'All at once has the fewest hours; the other orders add to it.',
  open: 'options',
  options: [
    {
      id: 'in-stages',
      label: 'In stages, with a usable lathe between',
      means:
        'Carriage, then spindle and sensor, then cross slide. After each you can stop and use the lathe.',
      gains: 'You may stop for a year, learn on small steps, and buy for one stage at a time.',
      wrong: 'Wiring and setting up are done twice: 8 to 26 hours more, and a second round of freight.',
      skill: 3,
    },
    {
      id: 'all-at-once',
      label: 'Strip it once and do everything',
      means: 'The lathe comes apart once and goes together as a finished machine.',
      gains: 'The fewest hours in total.',
      wrong:
        'Months without a lathe. Projects that stall, stall here: four weekends without a finished task are the sign.',
      skill: 3,
    },
    {
      id: 'bench-electrics-first',
      label: 'Electrics on the bench, then the mechanics',
      means:
        'Cabinet, control and motors are built and proved on a bench before a bolt of the lathe is undone.',
      gains: 'Electrical and mechanical faults never mix, and the lathe stays in use the longest.',
      wrong: 'A bench rig to build and take down, 2 to 8 hours, and room for it.',
      skill: 3,
    },
  ],
};

const buying: Decision = {
  id: 'buying',
  subsystem: 'approach',
  place: 'guide',
  name: 'How parts are bought',
  ask: 'How will the parts be bought?',
  why: 'A kit costs money and saves drawing; used parts save money and cost hours. Mixed buying lies between.',
  thumb:
    'Buy locally what holds the work up, such as bearings and connectors; order from afar early what takes weeks, such as screws and motors.',
  assume: ['mixed-sellers', 'ready-kit', 'mostly-used'],
  assumeWhy: 'Most people buy from many sellers, far and near.',
  open: 'options',
  options: [
    {
      id: 'ready-kit',
      label: 'A ready kit for this type of lathe',
      means:
        'Brackets, nut housings and belt drives cut for one known lathe. Motors and electrics are bought besides.',
      gains: 'It is known to fit, and it comes with instructions: 8 to 30 hours saved.',
      wrong:
        'Two or three times the price of the parts, and it fits one version of the casting only. A screw hole 3 mm out shows on the day of fitting.',
      skill: 2,
      needs: 'Three dimensions of your casting checked with the seller.',
    },
    {
      id: 'mixed-sellers',
      label: 'Mixed: far and cheap, near and quick',
      means: 'Screws, motors and drives from abroad, small parts from near by.',
      gains: 'A fair price without long hunts.',
      wrong:
        'Parts that do not quite agree: 8 mm bores on 6.35 mm shafts. It shows on arrival, if you measure.',
      skill: 2,
    },
    {
      id: 'mostly-used',
      label: 'Mostly used or surplus',
      means: 'Screws, motors and drives from old machines, auctions and surplus sellers.',
      gains: 'Motors and screws for a third to a half less, sometimes of far better make.',
      wrong:
        'Unknown life, missing papers and odd sizes: 10 to 60 hours for hunting and testing. A dented screw shows as a rough spot.',
      skill: 4,
      needs: 'A way to test motors and drives on arrival.',
    },
  ],
};

const brackets: Decision = {
  id: 'brackets',
  subsystem: 'approach',
  place: 'guide',
  name: 'Where brackets come from',
  ask: 'Where do the brackets and motor plates come from?',
  why: 'The lathe makes parts for its own conversion. What has to be turned on it must be finished before it comes apart.',
  thumb:
    'List every turned or bored part with its bore and the day it is wanted; nothing on that list may be open when the lathe comes apart.',
  askWhen: all(not(is('which-lathe', 'dead-training-machine')), not(is('buying', 'ready-kit'))),
  assume: ['made-on-this-lathe', 'made-with-a-mill', 'ordered-to-drawing', 'welded', 'printed-first'],
  assumeWhy: 'With a drill press and this lathe everybody can make them, and it costs the least.',
  open: 'options',
  options: [
    {
      id: 'made-on-this-lathe',
      label: 'Made on this lathe and a drill press',
      means:
        'Plate is sawn, drilled and filed; bores and faces are turned on the lathe before it is stripped.',
      gains: 'The cheapest, and easy to change.',
      wrong:
        'Sizes guessed before the lathe is open turn out wrong: leave slots and shims for a millimetre each way.',
      skill: 4,
      needs: 'Drill press, four-jaw chuck, patience.',
    },
    {
      id: 'made-with-a-mill',
      label: 'Made on a mill that is free throughout',
      means: 'A mill of your own, or one at a club, also while the lathe is apart.',
      gains: 'Mistakes can be mended later, and faces come out square.',
      wrong: 'Travel and waiting for a turn at the machine.',
      skill: 3,
      needs: 'A mill, owned, borrowed or hired.',
    },
    {
      id: 'ordered-to-drawing',
      label: 'Drawn and ordered from a service',
      means: 'You send drawings; plates come back cut by laser, water jet or a milling shop.',
      gains: 'The least work at the bench, and clean parts.',
      wrong: 'A wrong drawing is a wrong part, and each round takes one to three weeks.',
      skill: 3,
      needs: 'Drawing software and a feeling for tolerances; a cardboard or printed part to try first.',
    },
    {
      id: 'printed-first',
      label: 'Printed in plastic first, metal later',
      means: 'Plastic brackets to try the fit, replaced by metal before steel is cut.',
      gains: 'A cheap trial that shows what collides.',
      wrong: 'Plastic creeps and bends: positions drift under load. It shows as play that grows by the week.',
      skill: 3,
      needs: 'A printer, and metal brackets later all the same.',
    },
    {
      id: 'welded',
      label: 'Welded from plate',
      means: 'Sawn plate welded into angles, then machined flat.',
      gains: 'Strong, and good for odd shapes.',
      wrong:
        'Welds pull the plate out of shape: faces must be machined afterwards. It shows as a screw that binds at one end.',
      skill: 4,
      needs: 'A welder, and a machine for the faces.',
    },
  ],
};

export const orderDecisions: readonly Decision[] = [orderOfWork, buying, brackets];
