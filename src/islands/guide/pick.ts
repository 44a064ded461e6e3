import type { Decision } from '../../calc/core/decision.ts';
import { $path, answer } from '../stores.ts';

/** Ticks or unticks one of several answers; with the last one gone the question is unanswered again. */
function toggle(id: string, option: string, picked: boolean): void {
  const others = ($path.get().answers[id] ?? []).filter((other) => other !== option);
  const answers = picked ? [...others, option] : others;
  answer(id, answers.length > 0 ? answers : undefined);
}

/** Takes an option as the answer, or as one of several where several may be ticked. */
export function pick(decision: Decision, option: string, picked: boolean): void {
  if (decision.many) toggle(decision.id, option, picked);
  else answer(decision.id, [option]);
}
