import { parts, risks, tasks } from '../calc/trade.ts';
import { checkLabels } from '../components/book/check-labels.ts';
import { settingGroups } from '../content/told/settings.ts';

/** Parts of pages that a script draws when the figures are there, by the address of the page. */
export const drawnSections: Readonly<Record<string, readonly string[]>> = {
  'plan/': ['checks', 'findings', 'make-first', 'parts', 'proof', 'risks', 'safety', 'settings', 'stages'],
};

const ids = (kind: string, list: Iterable<string>): string[] => [...list].map((id) => `${kind}-${id}`);
const idsOf = (list: readonly { readonly id: string }[]) => list.map(({ id }) => id);

const drawnThings = new Set([
  ...ids('check', checkLabels.keys()),
  ...ids('part', idsOf(parts)),
  ...ids('task', idsOf(tasks)),
  ...ids('risk', idsOf(risks)),
  ...ids(
    'setting',
    settingGroups.map(({ axis }) => axis),
  ),
]);
/** Pages that draw the things of the owner's own path. */
const OWN = new Set(['plan/', 'buy-list/', 'bench/']);

/** Whether a page with a script draws a place of this name later: it is not on the page as it was built. */
export const isDrawnLate = (page: string, anchor: string): boolean =>
  (OWN.has(page) && drawnThings.has(anchor)) || !!drawnSections[page]?.includes(anchor);
