import type { ExplainedInput, Explanation } from '../../calc/why-number.ts';
import { siText } from '../shared/quantity.ts';

const SIGNS: Readonly<Record<string, string>> = {
  sum: ' + ',
  difference: ' − ',
  product: ' × ',
  quotient: ' ÷ ',
  largest: '; ',
  smallest: '; ',
};

const WORDS: Readonly<Record<string, string>> = { largest: 'the largest of ', smallest: 'the smallest of ' };

function saidInput({ word, parts }: ExplainedInput): string {
  if (word !== undefined) return `“${word}”`;
  const [first] = parts;
  return parts.length === 1 && first ? siText(first) : `(${parts.map((part) => siText(part)).join('; ')})`;
}

/** An equation in plain text with the figures in place of the names, as one line that can be checked by hand. */
export function substituted({ law, inputs, value, unit }: Explanation): string | undefined {
  if (!law || inputs.length === 0) return undefined;
  const sign = SIGNS[law.id];
  const result = siText({ value, unit });
  if (sign) return `${WORDS[law.id] ?? ''}${inputs.map(saidInput).join(sign)} = ${result}`;
  const right = law.equation.slice(law.equation.indexOf('=') + 1).trim();
  return inPlace(right, inputs)?.concat(` = ${result}`);
}

/** Undefined where the equation is a sentence, or does not name every input: figures in it would read as nonsense. */
function inPlace(equation: string, inputs: readonly ExplainedInput[]): string | undefined {
  if (!/[×÷+−√^·²³]/.test(equation)) return undefined;
  const figures = new Map(inputs.map((input) => [input.name, saidInput(input)]));
  const left = new Set(figures.keys());
  const said = equation.replace(/(\p{L}[\p{L}\p{Nd}]*)([²³⁴^]?)/gu, (whole, word: string, power: string) => {
    const figure = figures.get(word);
    if (figure === undefined) return whole;
    left.delete(word);
    return power ? `(${figure})${power}` : figure;
  });
  return left.size === 0 ? said : undefined;
}
