import type { Report } from '../../calc/evaluate.ts';
import { PaperHead } from '../shared/PaperHead.tsx';

/** The head of the list on paper. */
export const SheetHead = ({ report }: { report: Report }) => (
  <PaperHead report={report} title="Buy list" page="buy-list/" />
);
