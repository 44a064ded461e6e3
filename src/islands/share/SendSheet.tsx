import { useEffect, useRef, useState } from 'preact/hooks';
import type { Compared } from '../../calc/core/compared.ts';
import type { Path } from '../../calc/core/path.ts';
import { encodeComparison } from '../../link/comparison.ts';
import type { Carried } from '../../link/encode.ts';
import { LinkCode } from '../shared/LinkCode.tsx';
import { to } from '../shared/places.ts';
import { saidAnswers, saidOthers } from './holds.ts';
import { Length } from './Length.tsx';
import { Private } from './Private.tsx';
import { canSend, copy, send } from './send-words.ts';

export interface Sent {
  readonly path: Path;
  /** What stands beside it in a comparison, each path with the prices it is reckoned with here. */
  readonly others?: readonly Compared[];
  /** The page that the link opens, without the leading slash: "plan/". */
  readonly page: string;
}

function Ways({ link, select }: { link: string; select: () => void }) {
  const [said, setSaid] = useState('');
  const [code, setCode] = useState(false);
  useEffect(() => setSaid(''), [link]);
  return (
    <>
      <p class="button-row send-ways">
        <button type="button" class="button" onClick={async () => setSaid(await copy(link, select))}>
          Copy the link
        </button>
        {canSend(link) ? (
          <button
            type="button"
            class="button"
            onClick={async () => setSaid(await send(link, document.title))}
          >
            Send it with …
          </button>
        ) : null}
        <button type="button" class="button" aria-expanded={code} onClick={() => setCode(!code)}>
          {code ? 'Hide the code' : 'Show it as a code'}
        </button>
      </p>
      <p class="send-said" role="status">
        {said}
      </p>
      {code ? <LinkCode link={link} asked onScreen /> : null}
    </>
  );
}

/** A file holds notes and names too, and has no limit: it is made on the buy list. */
function AsFile({ shut }: { shut: () => void }) {
  const here = document.getElementById('files');
  const goThere = () => {
    shut();
    here?.scrollIntoView();
    here?.focus({ preventScroll: true });
  };
  return (
    <p class="send-file">
      A file carries everything, notes and names too:{' '}
      {here ? (
        <button type="button" class="link-button" onClick={goThere}>
          save everything as a file
        </button>
      ) : (
        <a href={to('buy-list/')} data-keep-path>
          save everything as a file, on the buy list under “In and out”
        </a>
      )}
      .
    </p>
  );
}

/** All there is to say and do about a link before it is sent. */
export function SendSheet({ path, others = [], page, shut }: Sent & { shut: () => void }) {
  const [also, setAlso] = useState<Carried>({});
  const text = useRef<HTMLTextAreaElement>(null);
  const link = new URL(`${to(page)}#${encodeComparison(path, others, also)}`, window.location.href).href;
  const beside = saidOthers(others);
  return (
    <>
      <p>
        It holds {saidAnswers(path)}
        {beside ? `; beside it ${beside}` : ''}; prices of edition {path.edition}. Nothing is sent to us.
      </p>
      <Private path={path} others={others} also={also} onAlso={setAlso} />
      <label class="field-name" for="send-link">
        The link
      </label>
      <textarea
        id="send-link"
        class="send-link"
        ref={text}
        readOnly
        rows={4}
        value={link}
        spellcheck={false}
        onFocus={(event) => event.currentTarget.select()}
      />
      <Length characters={link.length} />
      <Ways link={link} select={() => text.current?.focus()} />
      <p class="small">
        This link names the prices of edition {path.edition} and will open with its own figures; newer prices
        are offered there.
      </p>
      <AsFile shut={shut} />
    </>
  );
}
