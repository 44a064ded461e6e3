import type { Path } from '../calc/core/path.ts';
import type { Report } from '../calc/evaluate.ts';
import { movedBetween, type Receipt } from './receipts.ts';

/**
 * Each change gets its own figures, also when several came before the figures were ready. A change whose figures failed
 * says so and does not stand in the way of the next one. Receipts come and go newest first; `known` is the last report.
 */
export async function settled(
  receipts: readonly Receipt[],
  path: Path,
  known: Report | undefined,
  reportOf: (path: Path) => Promise<Report>,
): Promise<{ readonly receipts: readonly Receipt[]; readonly report: Report }> {
  let report = known;
  const oldestFirst: Receipt[] = [];
  for (const receipt of receipts.toReversed()) {
    if (receipt.moved || receipt.lost) {
      oldestFirst.push(receipt);
      continue;
    }
    try {
      const before = report?.path === receipt.pathBefore ? report : await reportOf(receipt.pathBefore);
      report = await reportOf(receipt.pathNow);
      oldestFirst.push({ ...receipt, moved: movedBetween(before, report, receipt.decision) });
    } catch {
      oldestFirst.push({ ...receipt, lost: true });
    }
  }
  return {
    receipts: oldestFirst.toReversed(),
    report: report?.path === path ? report : await reportOf(path),
  };
}
