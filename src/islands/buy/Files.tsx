import { useStore } from '@nanostores/preact';
import type { Report } from '../../calc/evaluate.ts';
import { Send } from '../share/Send.tsx';
import { $path } from '../stores.ts';
import { BringIn } from './BringIn.tsx';
import { TakeOut } from './TakeOut.tsx';

/** The list in and out: files, a message, paper. */
export function Files({ report }: { report: Report }) {
  return (
    <section class="rule-section no-print" id="files" tabIndex={-1}>
      <h2>In and out</h2>
      <p>
        Prices and orders are kept on this device only. They are in a link only when you put them in. A
        browser can lose them, so save a file now and then.
      </p>
      <TakeOut report={report} />
      <h3>Send it</h3>
      <p>
        <Send path={useStore($path)} page="buy-list/" />
      </p>
      <BringIn report={report} />
    </section>
  );
}
