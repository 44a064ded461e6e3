import { useStore } from '@nanostores/preact';
import type { Report } from '../../calc/evaluate.ts';
import { planName } from '../plan/words.ts';
import { $open } from '../stores.ts';

/** What the open path is called: by its owner, else after what is driven and in which order. */
export function usePlanName(report: Report): string {
  const { record } = useStore($open);
  return record?.name ?? planName(report);
}
