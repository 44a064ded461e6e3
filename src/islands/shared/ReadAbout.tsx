import type { ToldIn } from '../../content/told/told-in.ts';
import { sections, topics } from '../../content/told/topics.ts';
import { to } from './places.ts';

interface Props {
  readonly kind: keyof typeof sections;
  /** Which topics tell of the things of this kind. */
  readonly told: ToldIn;
  readonly id: string;
}

/** Where the book tells of a thing: quiet links on the screen, nothing on paper. */
export function ReadAbout({ kind, told, id }: Props) {
  const about = (told[id] ?? []).flatMap((at) => (topics[at] ? [topics[at]] : []));
  if (about.length === 0) return null;
  return (
    <span class="read-about no-print">
      {'Read: '}
      {about.map(([topic, title], at) => (
        <span key={topic}>
          {at > 0 ? ', ' : ''}
          <a href={to(`book/topics/${topic}/#${sections[kind]}`)} data-keep-path>
            {title}
          </a>
        </span>
      ))}
    </span>
  );
}
