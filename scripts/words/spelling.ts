import dictionary from 'dictionary-en-gb';
import nspell from 'nspell';
import { screenWords, tradeWords } from './trade-words.ts';

const words = new Intl.Segmenter('en-GB', { granularity: 'word' });
/** The British dictionary of the Hunspell project that spells "-ise", one variant of a word where there are several. */
const speller = nspell(Buffer.from(dictionary.aff), Buffer.from(dictionary.dic));
for (const word of [...tradeWords, ...screenWords]) speller.add(word);

/** The words of a text that the British dictionary and the list of trade words do not know, each once. */
export function misspelled(text: string): string[] {
  const found = [...words.segment(text.replaceAll('’', "'"))]
    .filter(({ segment, isWordLike }) => isWordLike && !/\d/.test(segment))
    .map(({ segment }) => segment.replace(/'s$/, ''));
  return [...new Set(found)].filter((word) => !speller.correct(word));
}
