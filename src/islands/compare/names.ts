import type { ComparedColumn } from '../../calc/comparing.ts';
import type { Path } from '../../calc/core/path.ts';
import { sizeNames } from '../../calc/facts.ts';
import { decisionById, decisions } from '../../calc/guide.ts';
import { sayAnswer } from '../receipts.ts';

export const LETTERS = ['A', 'B', 'C', 'D'] as const;

export const letterOf = (at: number): string => LETTERS[at] ?? '';

/** A column with its letter, what it is called and what it is. */
export interface Called {
  readonly id: string;
  readonly letter: string;
  readonly name: string;
  readonly means: string;
}

/** A label as it stands inside a sentence; what begins with capitals throughout, such as PC, keeps them. */
export const small = (text: string): string =>
  /^[A-Z][a-z ]/.test(text) ? text.charAt(0).toLowerCase() + text.slice(1) : text;

function said(path: Path, id: string): string {
  const decision = decisionById(id);
  const answer = path.answers[id];
  return decision && answer && answer.length > 0 ? sayAnswer(decision, answer) : '';
}

/** "both slides; motion card in a computer; frequency drive": what its answers say first about a path. */
export function describe(path: Path): string {
  const words = ['driven-axes', 'control', 'spindle-motor'].map((id) => said(path, id)).filter(Boolean);
  const answered = Object.values(path.answers).filter((answer) => answer.length > 0).length;
  if (words.length === 0)
    return `A ${sizeNames[path.size]} lathe, ${answered === 0 ? 'nothing answered yet' : 'most left open'}`;
  return words.map((word, at) => (at === 0 ? word : small(word))).join('; ');
}

const answersThatDiffer = (a: Path, b: Path) =>
  decisions.filter(({ id }) => (a.answers[id] ?? []).join() !== (b.answers[id] ?? []).join());

/** "As A, but: ready-made control" where few answers differ; else how it is controlled, which sets it apart most. */
export function nameOfPath(path: Path, first: Path): string {
  const differing = answersThatDiffer(first, path);
  const sameLathe = path.size === first.size && JSON.stringify(path.facts) === JSON.stringify(first.facts);
  if (!sameLathe || differing.length > 2)
    return said(path, 'control') || said(path, 'driven-axes') || 'Another conversion';
  if (differing.length === 0)
    return path.edition === first.edition ? 'The same as A' : `A at edition ${path.edition}`;
  const words = differing.map(
    (decision) => said(path, decision.id) || `${decision.name.toLowerCase()} left open`,
  );
  return `As A, but: ${words.map(small).join('; ')}`;
}

/** The columns by name; `names` are what they were called where they came from, by place, as far as anyone knows. */
export function calledAll(
  columns: readonly ComparedColumn[],
  first: Path,
  names: readonly [open: string, ...others: (string | undefined)[]],
): Called[] {
  return columns.map(({ alternative, path }, at) => {
    const letter = letterOf(at);
    if (alternative) return { id: letter, letter, name: alternative.name, means: alternative.means };
    const about = path ? describe(path) : '';
    const name = names[at] ?? (path ? nameOfPath(path, first) : '');
    return { id: letter, letter, name, means: about };
  });
}
