import { plain } from '../shared/format.ts';
import { lengths, saidLength } from './length.ts';

/** How long a link is, as a picture and in words. */
export function Length({ characters }: { characters: number }) {
  const { everywhere, mostly, most } = lengths;
  return (
    <p class="send-length">
      <meter
        min={0}
        low={everywhere}
        high={mostly}
        max={most}
        optimum={0}
        value={characters}
        aria-label="Length of the link"
        aria-valuetext={`${plain(characters)} of ${plain(most)} characters`}
      />
      <span>
        <b>{plain(characters)} characters.</b> {saidLength(characters)}
      </span>
    </p>
  );
}
