import type { Word } from './word.ts';

export const money: readonly Word[] = [
  {
    word: 'bare parts',
    kept: 'Said by the buy list.',
    means: 'What people quote when asked what it cost: parts only, without tools, freight, tax or mishaps.',
  },
  {
    word: 'build',
    linked: false,
    kept: 'A word of this site: it stands under every rod.',
    means: 'One of the ways that a path could turn out. There are 20 on a rod, all equally likely.',
  },
  {
    word: 'duty',
    also: ['customs duty', 'tariff'],
    linked: ['duty', 'customs duty', 'tariff'],
    means: 'What your country takes on goods from abroad.',
  },
  {
    word: 'edition',
    means:
      'One set of planning prices, with a date. It is never changed afterwards; a new one takes its place.',
  },
  {
    word: 'hold point',
    kept: 'Said by the plan.',
    means: 'A point in the work where you go on only when everything in it is true.',
  },
  {
    word: 'landed price',
    linked: ['landed price'],
    means: 'What a thing costs at your door: price, freight, tax and duty.',
  },
  {
    word: 'likely',
    linked: false,
    kept: 'It stands over every table of prices.',
    means:
      'What a careful person would expect. More than half of all lines cost more, so the total lies above the sum of them.',
  },
  {
    word: 'make-first list',
    means: 'Parts that the lathe must cut while it still can, before it is taken apart.',
  },
  {
    word: 'path',
    linked: false,
    kept: 'A word of this site: it stands on every plan.',
    means: 'One lathe with your answers, figures, prices and ticks. The plan is worked out from it.',
  },
  {
    word: 'reference',
    linked: false,
    kept: 'It stands where paths are compared.',
    means: 'The set of answers that others are compared with. It is not advice.',
  },
  {
    word: 'typical',
    linked: false,
    kept: 'It stands beside every range.',
    means: 'The middle of all the ways it could turn out.',
  },
  {
    word: 'VAT',
    also: ['value-added tax', 'sales tax'],
    linked: ['VAT', 'value-added tax', 'sales tax'],
    means: 'Tax on what you buy. On imports it is charged on goods, freight and duty together.',
  },
];
