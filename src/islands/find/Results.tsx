import { to } from '../shared/places.ts';
import { marked } from './marked.ts';
import type { Found } from './search.ts';

interface Props {
  readonly found: readonly Found[];
  /** Words of the book near to those asked for. */
  readonly near: readonly string[];
  readonly ask: (words: string) => void;
}

const Line = ({ text, by }: Found) => (
  <span class="find-line">
    {marked(text, by).map((run) => (run.hit ? <mark>{run.text}</mark> : run.text))}
  </span>
);

/** The places found, or what to try where there are none. */
export function Results({ found, near, ask }: Props) {
  if (found.length === 0)
    return (
      <>
        {near.length > 0 ? (
          <p>
            Near to it:{' '}
            {near.map((word) => (
              <>
                <button type="button" class="button" onClick={() => ask(word)}>
                  {word}
                </button>{' '}
              </>
            ))}
          </p>
        ) : null}
        <p>
          Fewer words find more. Or look in the{' '}
          <a href={to('book/')} data-keep-path>
            contents of the book
          </a>{' '}
          and in{' '}
          <a href={to('words/')} data-keep-path>
            Words
          </a>
          .
        </p>
      </>
    );
  return (
    <ol class="list-plain find-results">
      {found.map((each) => (
        <li key={each.at + each.title}>
          <a href={to(each.at)} data-keep-path>
            {each.title}
          </a>
          <span class="quiet small"> {each.place}</span>
          <Line {...each} />
        </li>
      ))}
    </ol>
  );
}
