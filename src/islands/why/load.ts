import type { Path } from '../../calc/core/path.ts';
import type { Asked, Explanation } from '../../calc/why-number.ts';
import { to } from '../shared/places.ts';

/** MathML of each formula by id, made when the site was built. */
export type Equations = Readonly<Record<string, string>>;

let equations: Promise<Equations> | undefined;

/** Without them the plain text of an equation stands in: a page that is offline still explains. */
async function fetchEquations(): Promise<Equations> {
  try {
    const answer = await fetch(to('equations.json'));
    return answer.ok ? await answer.json() : {};
  } catch {
    equations = undefined;
    return {};
  }
}

export interface Answer {
  /** Undefined where the number does not arise on this path or still needs a figure. */
  readonly explanation: Explanation | undefined;
  readonly equations: Equations;
  readonly edition: { readonly id: string; readonly date: string };
}

/** Works an explanation out; what that takes is loaded when the first one is asked for. */
export async function answerOf(path: Path, asked: Asked): Promise<Answer> {
  equations ??= fetchEquations();
  const fetched = equations;
  const { explained } = await import('./explain.ts');
  return { ...explained(path, asked), equations: await fetched };
}
