/** American spellings of words that the book writes in British. */
const BRITISH: Readonly<Record<string, string>> = {
  aluminum: 'aluminium',
  center: 'centre',
  color: 'colour',
  gage: 'gauge',
  gray: 'grey',
  liter: 'litre',
  meter: 'metre',
  millimeter: 'millimetre',
  mold: 'mould',
  programme: 'program',
  vise: 'vice',
  vapor: 'vapour',
};

/** One of several as the one: "screws" → "screw", "bodies" → "body". */
function singular(word: string): string {
  if (word.length > 4 && word.endsWith('ies')) return `${word.slice(0, -3)}y`;
  if (/(ch|sh|ss|x)es$/.test(word)) return word.slice(0, -2);
  return word.length > 3 && /[^siu]s$/.test(word) ? word.slice(0, -1) : word;
}

/** A word as it stands in the index: small letters, one of several, British. */
export function fold(word: string): string {
  const one = singular(word.toLowerCase().replaceAll('’', "'").replace(/'s?$/, ''));
  return BRITISH[one] ?? one.replace(/iz(e|ed|ing|ation)$/, 'is$1');
}

/** One word; a hyphen parts two, so that "half-nut" is found by "nut". */
export const WORD = /[\p{L}\p{N}]+(?:['’]\p{L}+)?/gu;

export const wordsOf = (text: string): string[] => text.match(WORD) ?? [];
