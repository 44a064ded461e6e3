import { fleschKincaid } from 'flesch-kincaid';
import { syllable } from 'syllable';

const sentences = new Intl.Segmenter('en-GB', { granularity: 'sentence' });
const words = new Intl.Segmenter('en-GB', { granularity: 'word' });

export interface Reading {
  readonly sentences: number;
  readonly words: number;
  /** United States school grade; the age of a reader is about five years more. */
  readonly grade: number;
}

const wordsIn = (text: string): string[] =>
  [...words.segment(text)].filter(({ isWordLike }) => isWordLike).map(({ segment }) => segment);

const sentencesIn = (text: string): number =>
  [...sentences.segment(text)].filter(({ segment }) => wordsIn(segment).length > 0).length;

/** A number in digits is read as one beat: people who measure see it as one thing. */
const beats = (word: string): number => Math.max(1, syllable(word));

/**
 * How hard some paragraphs are to read: Flesch–Kincaid grade (Kincaid et al., Research Branch Report 8-75, 1975).
 * Every paragraph ends its last sentence. Without a word the grade is not a number.
 */
export function readingOf(blocks: readonly string[]): Reading {
  const all = blocks.flatMap(wordsIn);
  const count = {
    sentence: blocks.reduce((sum, block) => sum + sentencesIn(block), 0),
    word: all.length,
    syllable: all.reduce((sum, word) => sum + beats(word), 0),
  };
  return { sentences: count.sentence, words: count.word, grade: fleschKincaid(count) };
}
