import type { Report } from '../../calc/evaluate.ts';

/** Checks and findings of a path by result; findings that are only notes are left out. */
export interface Tally {
  readonly ok: number;
  readonly notYet: number;
  readonly look: readonly string[];
  readonly stop: readonly string[];
}

/** Counts what is in order and names what is not. */
export function tallyOf({ checks, findings }: Report): Tally {
  const labels = (result: string) =>
    checks.filter((check) => check.result === result).map((check) => check.label);
  const said = (level: string) =>
    findings.filter((finding) => finding.level === level).map((finding) => finding.say);
  return {
    ok: labels('ok').length,
    notYet: labels('not-yet').length,
    look: [...labels('look'), ...said('look')],
    stop: [...labels('stop'), ...said('stop')],
  };
}
