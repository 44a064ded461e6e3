import { useId, useState } from 'preact/hooks';
import { decodeComparison } from '../../link/decode.ts';
import { fragmentIn } from '../pasted.ts';
import { $path } from '../stores.ts';
import { $others, putBeside } from './columns.ts';
import { pasted } from './pasted-columns.ts';

/** A link that somebody sent: its path, or the paths of a comparison as far as they fit. */
export function PastedLink({ full }: { full: boolean }) {
  const id = useId();
  const [text, setText] = useState('');
  const [said, setSaid] = useState('');
  const put = () => {
    const fragment = fragmentIn(text);
    const found = pasted(
      fragment === undefined ? undefined : decodeComparison(fragment),
      $path.get(),
      $others.get() ?? [],
    );
    setSaid(found.say);
    if (found.columns.length === 0) return;
    for (const column of found.columns) putBeside(column);
    setText('');
  };
  return (
    <div class="compare-way">
      <label for={id}>A link that somebody sent</label>
      <input
        id={id}
        type="text"
        autocomplete="off"
        spellcheck={false}
        value={text}
        aria-describedby={`${id}-said`}
        onInput={(event) => setText(event.currentTarget.value)}
      />
      <p class="field-message look" id={`${id}-said`} role="status">
        {said}
      </p>
      <button type="button" class="button small" disabled={full} onClick={put}>
        Put it beside A<span class="visually-hidden">: the pasted link</span>
      </button>
    </div>
  );
}
