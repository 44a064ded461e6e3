import type { Decision, Option } from '../../core/decision.ts';

const fact = (id: string, label: string, means: string): Option => ({
  id,
  label,
  means,
  gains: '',
  wrong: '',
  skill: 1,
});

const spindleNose: Decision = {
  id: 'spindle-nose',
  subsystem: 'purpose',
  place: 'lathe',
  name: 'Spindle nose',
  ask: 'How is the chuck held on the spindle?',
  why: 'A chuck that screws on can unscrew when the spindle reverses or stops hard. Bolted and cam-lock chucks cannot.',
  thumb: 'Screwed nose and no clamps: forward only, and five seconds or more to stop.',
  findOut:
    'Unplug the lathe and look behind the chuck. A thread and a shoulder: screwed. Short cams turned with a square key: cam lock. Three or four nuts or bolts: bolted.',
  assume: ['screwed-nose', 'nose-not-known', 'cam-lock-nose', 'bolted-nose'],
  assumeWhy: 'A screwed nose asks for the most care, so we plan for it until you have looked.',
  open: 'assumed',
  options: [
    fact(
      'screwed-nose',
      'Screwed on',
      'The chuck turns onto a thread and comes off by turning it the other way.',
    ),
    fact('cam-lock-nose', 'Cam lock', 'Pins in the chuck are drawn in by cams around the nose.'),
    fact(
      'bolted-nose',
      'Bolted to a flange',
      'Studs or bolts go through a flange, and a taper or register centres the chuck.',
    ),
    fact(
      'nose-not-known',
      'Looked, and cannot tell',
      'Chuck off, and still not sure what it is; we treat it as screwed.',
    ),
  ],
};

const powerCrossFeed: Decision = {
  id: 'power-cross-feed',
  subsystem: 'purpose',
  place: 'lathe',
  name: 'Power cross feed',
  ask: 'Does the cross slide have power feed from the apron?',
  why: 'That feed lives in the apron gears. It goes with them when a ball screw takes their place.',
  thumb:
    'A second lever or a push-pull knob on the apron, besides the half-nut lever, nearly always means power cross feed.',
  findOut:
    'With the spindle turning slowly by hand and a feed engaged, watch whether the cross-slide handle turns by itself.',
  assume: ['no-power-cross-feed', 'has-power-cross-feed'],
  assumeWhy: 'Most small lathes have none.',
  open: 'assumed',
  options: [
    fact('has-power-cross-feed', 'Yes', 'A lever on the apron lets the cross slide feed by itself.'),
    fact('no-power-cross-feed', 'No', 'The cross slide moves only when you turn its handle.'),
  ],
};

const slideSlots: Decision = {
  id: 'slide-slots',
  subsystem: 'purpose',
  place: 'lathe',
  name: 'Top of the cross slide',
  ask: 'What is the top of the cross slide like?',
  why: 'Tools in a row and rear posts bolt to slots. A plain slide needs a plate first.',
  thumb: 'Slots the shape of an upside-down T run along or across a slotted slide, at least two of them.',
  findOut:
    'Take off the small swivelling slide (compound) and look. Measure the flat length that is left, and write it down.',
  assume: ['plain-slide', 'slotted-slide'],
  assumeWhy: 'Most small lathes come with a plain slide.',
  open: 'assumed',
  options: [
    fact(
      'plain-slide',
      'Plain, with a round seat',
      'Flat or with a round seat for the compound, and no slots.',
    ),
    fact('slotted-slide', 'Slotted', 'Two or more T-shaped slots to which anything can be bolted.'),
  ],
};

const millAccess: Decision = {
  id: 'mill-access',
  subsystem: 'purpose',
  place: 'lathe',
  name: 'Milling and drilling',
  ask: 'Which machines can you use besides this lathe?',
  why: 'Brackets need flat faces and holes in line. A mill halves that work; without any machine you pay for it.',
  thumb: 'A drill press, files and patience make a bracket in a weekend; a mill makes it in an evening.',
  findOut: 'Ask at a club, a school or the neighbour before you say no, and note the hours when it is free.',
  assume: ['drill-press-only', 'borrowed-mill', 'own-mill', 'no-machine-tools'],
  assumeWhy: 'A drill press is what most people with a lathe have.',
  open: 'assumed',
  options: [
    fact('own-mill', 'A mill of my own', 'A milling machine, or a mill-drill, in your workshop.'),
    fact('borrowed-mill', 'A mill I can borrow', 'At a club, at work or with a friend, at agreed hours.'),
    fact('drill-press-only', 'A drill press only', 'Holes upright and square; faces are filed or turned.'),
    fact('no-machine-tools', 'None', 'Hand drill, files and saw.'),
  ],
};

const othersAtMachine: Decision = {
  id: 'others-at-machine',
  subsystem: 'purpose',
  place: 'lathe',
  name: 'Who else uses it',
  ask: 'Who will use or stand beside the machine?',
  why: 'A machine that starts by itself is a danger to whoever does not expect it. With employees the law looks at you as its maker.',
  thumb: 'If anybody but you can reach it, the main switch gets a padlock.',
  assume: ['only-me', 'family-or-friends', 'people-i-employ'],
  assumeWhy: 'Most of these machines have one user.',
  open: 'assumed',
  options: [
    fact('only-me', 'Only me', 'Nobody else comes near it while it has power.'),
    fact('family-or-friends', 'Family, friends or visitors', 'People who may touch it without knowing it.'),
    fact('people-i-employ', 'People I employ', 'Anyone who works for you, paid or as a trainee.'),
  ],
};

const experience: Decision = {
  id: 'experience',
  subsystem: 'purpose',
  place: 'lathe',
  name: 'What you have built',
  ask: 'Which work of this kind have you done before?',
  why: 'The hours of the plan are those of somebody careful who does it for the first time. Practice takes a quarter off, or more.',
  thumb: 'If in doubt, count yourself among the beginners: nobody has complained of being early.',
  findOut:
    'Think of the last machine you built or rebuilt: how long did you say it would take, and how long did it take?',
  assume: ['first-conversion', 'built-machines-before', 'converted-before'],
  assumeWhy: 'Most people convert one lathe in their life.',
  open: 'assumed',
  options: [
    fact(
      'first-conversion',
      'None: this is my first',
      'You turn parts, but have not built or wired a machine.',
    ),
    fact(
      'built-machines-before',
      'I have built or rebuilt machines',
      'Brackets, bearings and a cabinet are known work; a machine that moves by program is not.',
    ),
    fact('converted-before', 'I have converted a machine', 'You have done all of it once, and it runs.'),
  ],
};

export const machineDecisions: readonly Decision[] = [
  spindleNose,
  powerCrossFeed,
  slideSlots,
  millAccess,
  othersAtMachine,
  experience,
];
