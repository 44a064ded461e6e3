import { useStore } from '@nanostores/preact';
import { useState } from 'preact/hooks';
import { encodePath } from '../../link/encode.ts';
import { LinkCode } from '../shared/LinkCode.tsx';
import { $path } from '../stores.ts';
import { addressOf } from './address-of.ts';

async function copied(text: string): Promise<string> {
  try {
    await navigator.clipboard.writeText(text);
    return 'Copied.';
  } catch {
    return 'This browser does not let us copy. The link is in the address bar.';
  }
}

/** The link that is the plan: to copy, or to show to a telephone. Paper has it in full at its head. */
export function LinkCell() {
  const path = useStore($path);
  const [ticks, setTicks] = useState(false);
  const link = addressOf(encodePath(path, { progress: ticks }));
  const [said, setSaid] = useState('');
  const [shown, setShown] = useState(false);
  return (
    <div class="link-code no-print">
      <div>
        <span class="cell-label">Link</span>
        <p>Opens this very plan on any device. Nothing leaves yours.</p>
        {path.progress ? (
          <label class="choice">
            <input
              type="checkbox"
              checked={ticks}
              onChange={(event) => setTicks(event.currentTarget.checked)}
            />
            <span>With my ticks, readings and hours; notes and prices stay here</span>
          </label>
        ) : null}
        <button type="button" class="button small" onClick={async () => setSaid(await copied(link))}>
          Copy the link
        </button>
        <button type="button" class="button small" aria-expanded={shown} onClick={() => setShown(!shown)}>
          {shown ? 'Hide the code' : 'Show it as a code'}
        </button>
        <span class="link-said" role="status">
          {said}
        </span>
        {shown ? <LinkCode link={link} asked /> : null}
      </div>
    </div>
  );
}
