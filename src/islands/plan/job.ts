import { atom } from 'nanostores';
import { useEffect } from 'preact/hooks';
import type { Path } from '../../calc/core/path.ts';
import type { Report } from '../../calc/evaluate.ts';
import type { Calendar, StopPlan, Working } from '../../calc/working.ts';
import { useAnswer } from '../ask/use-answer.ts';

/** What every part of the sheet is drawn from. */
export interface Sheet {
  readonly report: Report;
}

/** What is worked out beside the page: each is missing until it comes, and only what shows it is drawn anew. */
export const $working = atom<Working | undefined>();
export const $calendar = atom<Calendar | undefined>();
export const $stops = atom<readonly StopPlan[] | undefined>();

/** Keeps what is worked out beside the page up to date. Draws nothing. */
export function BesideThePage({ path }: { path: Path }) {
  const { answer: working } = useAnswer('working', path);
  const { answer: calendar } = useAnswer('calendar', path);
  const { answer: stops } = useAnswer('stops', path);
  useEffect(() => $working.set(working), [working]);
  useEffect(() => $calendar.set(calendar), [calendar]);
  useEffect(() => $stops.set(stops), [stops]);
  return null;
}
