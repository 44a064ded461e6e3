import type { Explanation } from '../../calc/why-number.ts';

const nameOf = ({ title, value, unit, law }: Explanation): string => [title, value, unit, law?.id].join('|');

/**
 * The same explanation with every step worked out where it is first met, and only named where it comes again: for a
 * page or a sheet of paper that is read from the top.
 */
export function saidOnce(explanation: Explanation, seen: Set<string> = new Set()): Explanation {
  if (explanation.inputs.length === 0) return explanation;
  const name = nameOf(explanation);
  if (seen.has(name)) return again(explanation);
  seen.add(name);
  const inputs = explanation.inputs.map((input) => ({
    ...input,
    parts: input.parts.map((part) => saidOnce(part, seen)),
  }));
  return { ...explanation, inputs };
}

function again({ law: _, ...explanation }: Explanation): Explanation {
  return { ...explanation, say: 'Worked out above.', inputs: [] };
}
