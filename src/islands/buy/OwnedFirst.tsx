import { useStore } from '@nanostores/preact';
import { useState } from 'preact/hooks';
import type { Report } from '../../calc/evaluate.ts';
import { usuallyOwned } from '../../content/usually-owned.ts';
import { recall, remember } from '../memory.ts';
import { counted } from '../shared/format.ts';
import { OwnedTick } from '../shared/OwnedTick.tsx';
import { $path } from '../stores.ts';

const ASKED = 'asked-owned';

/**
 * Before any total: what is in the drawer already. It is asked until the owner says that this is all; after that one
 * line says how much is owned, and the list can be opened again.
 */
export function OwnedFirst({ report }: { report: Report }) {
  const { owned } = useStore($path);
  const [asked, setAsked] = useState(() => recall(ASKED) === 'yes');
  const lines = report.bill.once.filter(
    ({ credit, part, shopTool }) => !credit && (shopTool || usuallyOwned.includes(part)),
  );
  if (lines.length === 0) return null;
  const settle = (settled: boolean) => {
    setAsked(settled);
    remember(ASKED, settled ? 'yes' : 'no');
  };
  if (asked)
    return (
      <p class="no-print">
        {owned.length === 0
          ? 'You said that nothing is there yet.'
          : `${counted(owned.length, 'thing')} you have already ${owned.length === 1 ? 'costs' : 'cost'} nothing here.`}{' '}
        <button type="button" class="link-button" onClick={() => settle(false)}>
          Look through the drawer again
        </button>
      </p>
    );
  return (
    <section class="owned-first no-print">
      <h2>First: what is in the drawer already?</h2>
      <p>
        Totals mean little before this. Here is what owners of a lathe often have; on every other line below
        there is “I have it” too. What you have costs nothing; checking and fitting it still takes its hours.
      </p>
      <div class="choice-columns">
        {lines.map((line) => (
          <OwnedTick key={line.part} line={line}>
            {line.name}
          </OwnedTick>
        ))}
      </div>
      <p>
        <button type="button" class="button primary" onClick={() => settle(true)}>
          That is all I have of these
        </button>
      </p>
    </section>
  );
}
