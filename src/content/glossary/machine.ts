import type { Word } from './word.ts';

export const machine: readonly Word[] = [
  {
    word: 'apron',
    means: 'The casting on the front of the carriage, with the handwheel and the half-nut in it.',
  },
  {
    word: 'back gear',
    means:
      'Gears that let the spindle turn slowly with full force. Electronics can slow a motor down, but do not add force as gears do.',
  },
  {
    word: 'bed',
    also: ['ways'],
    linked: ['bed', 'beds'],
    means: 'The long casting that everything slides on. Its guiding faces are the ways.',
  },
  { word: 'carriage', means: 'The part that slides along the bed. Its direction is called Z.' },
  {
    word: 'centre height',
    means: 'The height of the spindle’s axis. The tip of every turning tool stands at it.',
  },
  {
    word: 'change gears',
    means: 'Loose gears that set which thread the lathe cuts.',
  },
  {
    word: 'chatter',
    means:
      'A howl and ripples on the work: tool and work shake each other. The cure is stiffness, or another speed.',
  },
  { word: 'chuck', means: 'Grips the work and turns with the spindle.' },
  {
    word: 'compound slide',
    also: ['top slide'],
    means: 'The small slide on top that swivels. Under program it is seldom needed.',
  },
  {
    word: 'cross slide',
    means: 'The part that moves the tool in and out, across the bed. Its direction is called X.',
  },
  { word: 'gib', also: ['jib'], means: 'An adjustable strip that sets how snugly a slide fits.' },
  {
    word: 'half-nut',
    also: ['split nut'],
    means: 'A nut in two halves that clamps on the lead screw to drive the carriage.',
  },
  { word: 'handwheel', means: 'The wheel by which a hand moves a slide.' },
  { word: 'headstock', means: 'The casting on the left that carries the spindle.' },
  {
    word: 'lead screw',
    means: 'The long screw along the bed that drives the carriage when a thread is cut.',
  },
  {
    word: 'nose, bolted',
    linked: ['bolted nose'],
    kept: 'An answer of the question about the spindle nose.',
    means: 'The chuck is bolted to a flange on the spindle. It cannot unscrew.',
  },
  {
    word: 'nose, cam-lock',
    linked: ['cam-lock nose', 'cam-lock'],
    kept: 'An answer of the question about the spindle nose.',
    means: 'The chuck is held on the spindle by cams turned with a key. It cannot unscrew.',
  },
  {
    word: 'nose, screwed',
    also: ['threaded spindle'],
    linked: ['screwed nose', 'threaded spindle', '(screwed) on its nose'],
    kept: 'An answer of the question about the spindle nose.',
    means: 'The chuck screws on the spindle. In reverse or in hard braking it can come off.',
  },
  {
    word: 'quill',
    kept: 'Said where the tailstock gets a motor.',
    means: 'The barrel of the tailstock. Its handwheel pushes it out.',
  },
  {
    word: 'rack and pinion',
    linked: ['rack and pinion', 'pinion', 'pinions', 'with a (rack)', 'by the (rack)'],
    means:
      'A toothed bar under the front of the bed, and the small gear of the handwheel that rolls along it and moves the carriage.',
  },
  { word: 'saddle', means: 'The part of the carriage that lies across the bed and carries the cross slide.' },
  { word: 'spindle', means: 'The hollow shaft in the headstock that turns the work.' },
  {
    word: 'swing',
    linked: ['swing', 'swing over the bed'],
    kept: 'A fact that is asked about the lathe.',
    means: 'The largest diameter that turns clear of the bed.',
  },
  {
    word: 'tailstock',
    means: 'The part at the right end of the bed. It holds a drill or steadies long work.',
  },
  {
    word: 'taper',
    linked: ['a (taper)', 'tapers'],
    means: 'A shape whose diameter changes evenly along its length, as a cone’s does.',
  },
  { word: 'travel', means: 'How far a slide can move from end to end.' },
  {
    word: 'tunnel',
    means:
      'The space under the cross slide in which its screw and nut lie. Its height decides what nut fits.',
  },
  { word: 'yaw', means: 'A slide that turns a little to one side when it is pushed off its middle.' },
];
