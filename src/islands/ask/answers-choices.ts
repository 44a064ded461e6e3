import { effectsOfQuestion, receiptOf, sideBySide, swingsOf, widestOpen } from '../../calc/choosing.ts';
import { alternatives } from '../../content/alternatives.ts';
import type { WorkedOut } from './answers.ts';
import { bookOf } from './book-of.ts';

/** What an answer would do or did, what swings the plan, and what else may answer the wish. */
export const answers: WorkedOut<'effects' | 'receipt' | 'widest' | 'side-by-side' | 'swings'> = {
  effects: (path, question) => effectsOfQuestion(path, bookOf(path), question),
  receipt: (path, before) => receiptOf(before, path, bookOf(path), bookOf(before)),
  widest: (path) => widestOpen(path, bookOf(path)),
  'side-by-side': (path) => sideBySide(path, bookOf(path), alternatives),
  swings: (path) => swingsOf(path, bookOf(path)),
};
