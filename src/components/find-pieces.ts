import { formulas } from '../calc/formulas/registry.ts';
import { decisions, rooms } from '../calc/guide.ts';
import { parts, risks, tasks } from '../calc/trade.ts';
import { anchorOf, wordAnchor } from '../content/book-topic.ts';
import { glossary } from '../content/glossary.ts';
import { inventedOwners } from '../content/invented-owners.ts';
import { leftOut } from '../content/left-out.ts';
import { safety } from '../content/safety.ts';
import { trustPages } from '../content/trust-pages.ts';
import type { Book, Piece } from '../islands/find/search.ts';

/** A topic page as it was written: its head, and its body in Markdown. */
export interface WrittenTopic {
  readonly id: string;
  readonly title: string;
  readonly room: string;
  readonly lede: string;
  readonly body: string;
}

const roomName = new Map<string, string>(rooms.map(({ id, number, name }) => [id, `${number}. ${name}`]));
const roomOf = (id: string): string => roomName.get(id) ?? '';

/** Markdown as plain text: no imports, pieces, stars, bars or addresses of links. */
const plain = (markdown: string): string =>
  markdown
    .replace(/^(import|export) .*$/gm, '')
    .replace(/<[^>]*>/g, '')
    .replace(/\[([^\]]*)\]\([^)]*\)/g, '$1')
    .replace(/[*_`|]|^[-\d.]+ /gm, '')
    .replace(/\s+/g, ' ')
    .trim();

/** A topic page in its sections. */
export function topicPieces({ id, title, room, lede, body }: WrittenTopic): Piece[] {
  const at = `book/topics/${id}/`;
  const place = `Book, ${roomOf(room)}`;
  const sections = body.split(/^## /m).slice(1);
  return [
    { title, place, at, text: lede },
    ...sections.map((section) => {
      const [heading = '', ...rest] = section.split('\n');
      return {
        title: `${title}: ${heading.trim()}`,
        place,
        at: `${at}#${anchorOf(heading.trim())}`,
        text: plain(rest.join('\n')),
      };
    }),
  ];
}

const inRoom = (kind: string, room: string, id: string): string => `book/${room}/#${kind}-${id}`;

function roomPieces(): Piece[] {
  return [
    ...decisions.map(({ id, subsystem, place, ask, why, thumb }) => ({
      title: ask,
      place: `Question, ${roomOf(subsystem)}`,
      at: place === 'lathe' ? `lathe/?at=${id}` : `questions/${id}/`,
      text: `${why} ${thumb}`,
    })),
    ...parts.map(({ id, subsystem, name, note }) => ({
      title: name,
      place: `Part, ${roomOf(subsystem)}`,
      at: inRoom('part', subsystem, id),
      text: note,
    })),
    ...tasks.map(({ id, subsystem, name, test }) => ({
      title: name,
      place: `Task, ${roomOf(subsystem)}`,
      at: inRoom('task', subsystem, id),
      text: test,
    })),
    ...risks.map(({ id, subsystem, name, cause, sign, prevent }) => ({
      title: name,
      place: `What goes wrong, ${roomOf(subsystem)}`,
      at: inRoom('risk', subsystem, id),
      text: `${cause} Early sign: ${sign} ${prevent}`,
    })),
  ];
}

function otherPieces(): Piece[] {
  return [
    ...glossary.flatMap(({ words }) =>
      words.map(({ word, also = [], means }) => ({
        title: [word, ...also].join(', '),
        place: 'Words',
        at: `words/#${wordAnchor(word)}`,
        text: means,
      })),
    ),
    ...formulas.map(({ id, label, source }) => ({
      title: label,
      place: 'Formulas',
      at: `formulas/#${id}`,
      text: `${source.ref}, ${source.at}`,
    })),
    ...leftOut.flatMap(({ items }) =>
      items.map(({ id, name, out, held = '', add }) => ({
        title: name,
        place: 'What it leaves out',
        at: `trust/left-out/#${id}`,
        text: [out, held, add].filter(Boolean).join(' '),
      })),
    ),
    ...trustPages.map(({ page, name, says }) => ({
      title: name,
      place: 'How far to trust it',
      at: page,
      text: says,
    })),
    ...safety.parts.map(({ title, lines }) => ({
      title,
      place: 'Safety',
      at: 'safety/',
      text: lines.join(' '),
    })),
    ...inventedOwners.map(({ id, name, story }) => ({
      title: name,
      place: 'Starting points',
      at: `starting-points/${id}/`,
      text: story,
    })),
  ];
}

/** Everything that can be found, and the other names of the trade. */
export const bookToFind = (topics: readonly WrittenTopic[]): Book => ({
  pieces: [...topics.flatMap(topicPieces), ...roomPieces(), ...otherPieces()],
  names: glossary.flatMap(({ words }) =>
    words.flatMap(({ word, also = [] }) => also.map((other) => [other, word] as const)),
  ),
});
