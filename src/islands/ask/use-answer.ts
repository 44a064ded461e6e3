import { useEffect, useState } from 'preact/hooks';
import type { Path } from '../../calc/core/path.ts';
import { $fault } from '../stores.ts';
import type { AnswerName, Answers, DetailOf } from './answers.ts';
import { ask } from './ask.ts';

/** An answer that asks for nothing but the path may leave the detail out. */
type More<Name extends AnswerName> =
  undefined extends DetailOf<Name> ? [detail?: DetailOf<Name>] : [detail: DetailOf<Name>];

/** The answer for a path, or the last one while a newer is worked out; undefined before the first. */
export function useAnswer<Name extends AnswerName>(
  name: Name,
  path: Path,
  wanted = true,
  ...more: More<Name>
): { readonly answer: Answers[Name] | undefined; readonly isOld: boolean } {
  const detail = more[0] as DetailOf<Name>;
  const [held, setHeld] = useState<{ readonly path: Path; readonly answer: Answers[Name] }>();
  useEffect(() => {
    if (!wanted) return;
    const unwanted = new AbortController();
    ask(name, path, detail, unwanted.signal)
      .then((answer) => {
        if (!unwanted.signal.aborted) setHeld({ path, answer });
      })
      .catch((fault: unknown) => {
        if (!unwanted.signal.aborted) $fault.set(fault);
      });
    return () => unwanted.abort();
  }, [name, path, wanted, detail]);
  return { answer: held?.answer, isOld: held !== undefined && held.path !== path };
}
