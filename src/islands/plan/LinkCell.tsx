import { useStore } from '@nanostores/preact';
import { useState } from 'preact/hooks';
import { encodePath } from '../../link/encode.ts';
import { to } from '../shared/places.ts';
import { $path } from '../stores.ts';

/** The whole address that opens this path again. */
const addressOf = (fragment: string): string =>
  new URL(`${to('plan/')}#${fragment}`, window.location.href).href;

async function copied(text: string): Promise<string> {
  try {
    await navigator.clipboard.writeText(text);
    return 'Copied.';
  } catch {
    return 'This browser does not let us copy. The link is in the address bar.';
  }
}

/** The link that is the plan: to copy on screen, in full on paper. */
export function LinkCell() {
  const link = addressOf(encodePath(useStore($path)));
  const [said, setSaid] = useState('');
  return (
    <div class="link-code">
      <div>
        <span class="cell-label">Link</span>
        <p class="no-print">Opens this very plan on any device. Nothing leaves yours.</p>
        <button
          type="button"
          class="button small"
          onClick={async () => setSaid(await copied(addressOf(encodePath($path.get()))))}
        >
          Copy the link
        </button>
        <span class="no-print link-said" role="status">
          {said}
        </span>
        <p class="print-only link-text">{link}</p>
      </div>
    </div>
  );
}
