/** An amount inside a sentence, in US dollars; whoever prints it says it in the currency of the reader. */
export interface Amount {
  readonly dollars: number;
}

/** A sentence with its amounts left as figures. */
export type Sentence = readonly (string | Amount)[];

export const dollars = (amount: number): Amount => ({ dollars: amount });

/** Words, figures, amounts and other sentences put together: say`It takes ${dollars(900)} and ${40} hours`. */
export const say = (
  words: TemplateStringsArray,
  ...between: readonly (string | number | Amount | Sentence)[]
): Sentence =>
  words.flatMap((text, at) => {
    const next = between[at];
    if (next === undefined) return text === '' ? [] : [text];
    if (typeof next === 'object') return 'dollars' in next ? [text, next] : [text, ...next];
    return [text, String(next)];
  });
