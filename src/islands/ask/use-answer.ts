import { useEffect, useState } from 'preact/hooks';
import type { Path } from '../../calc/core/path.ts';
import { $fault } from '../stores.ts';
import type { AnswerName, Answers } from './answers.ts';
import { ask } from './ask.ts';

/** The answer for a path, or the last one while a newer is worked out; undefined before the first. */
export function useAnswer<Name extends AnswerName>(
  name: Name,
  path: Path,
  wanted = true,
): { readonly answer: Answers[Name] | undefined; readonly isOld: boolean } {
  const [held, setHeld] = useState<{ readonly path: Path; readonly answer: Answers[Name] }>();
  useEffect(() => {
    if (!wanted) return;
    let isWanted = true;
    ask(name, path)
      .then((answer) => {
        if (isWanted) setHeld({ path, answer });
      })
      .catch((fault: unknown) => {
        if (isWanted) $fault.set(fault);
      });
    return () => {
      isWanted = false;
    };
  }, [name, path, wanted]);
  return { answer: held?.answer, isOld: held !== undefined && held.path !== path };
}
