import type { ComponentChildren } from 'preact';
import type { ToldIn } from '../../content/told/told-in.ts';
import { sections, topics } from '../../content/told/topics.ts';
import { to } from './places.ts';

type Topic = (typeof topics)[number];

interface Props {
  readonly kind: keyof typeof sections;
  /** Which topics tell of the things of this kind. */
  readonly told: ToldIn;
  readonly id: string;
  /** The room of the thing: topics of the same room come first. */
  readonly room: string;
}

/** The topics that tell of a thing, those of its own room first. */
export const topicsOf = (told: ToldIn, id: string, room: string): Topic[] =>
  (told[id] ?? [])
    .flatMap((at) => (topics[at] ? [topics[at]] : []))
    .toSorted((a, b) => Number(b[2] === room) - Number(a[2] === room));

/** Topics by name: quiet links on the screen, nothing on paper. */
export function Topics({ about, section = '' }: { about: readonly Topic[]; section?: string }) {
  if (about.length === 0) return null;
  return (
    <span class="read-about no-print">
      {'Read: '}
      {about.map(([topic, title], at) => (
        <span key={topic}>
          {at > 0 ? ', ' : ''}
          <a href={to(`book/topics/${topic}/${section}`)} data-keep-path>
            {title}
          </a>
        </span>
      ))}
    </span>
  );
}

/** Where the book tells of a thing. */
export const ReadAbout = ({ kind, told, id, room }: Props) => (
  <Topics about={topicsOf(told, id, room)} section={`#${sections[kind]}`} />
);

/** The name of a thing, leading to the topic that tells of it first. */
export function InTheBook({ kind, told, id, room, children }: Props & { children: ComponentChildren }) {
  const [topic] = topicsOf(told, id, room);
  if (!topic) return <>{children}</>;
  return (
    <a href={to(`book/topics/${topic[0]}/#${sections[kind]}`)} data-keep-path>
      {children}
    </a>
  );
}
