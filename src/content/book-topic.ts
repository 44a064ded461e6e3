import { z } from 'zod';
import { decisionById, rooms } from '../calc/guide.ts';

/** The parts that every topic page has, in their order. */
export const topicSections = [
  'What it decides',
  'How to choose',
  'What goes wrong, and the early sign',
  'How to measure',
] as const;

/** The anchor that a heading gets: small letters, hyphens for spaces, no other signs. */
export const anchorOf = (heading: string): string =>
  heading
    .toLowerCase()
    .replace(/[^a-z0-9 -]/g, '')
    .replaceAll(' ', '-');

/** The anchor of a word on the page of words. */
export const wordAnchor = (word: string): string => `word-${anchorOf(word)}`;

/** The section of a topic page in which each kind of thing is explained, as its anchor. */
export const sectionFor = {
  decisions: anchorOf(topicSections[1]),
  checks: anchorOf(topicSections[3]),
  parts: 'what-it-costs',
  tasks: 'the-work',
  risks: anchorOf(topicSections[2]),
} as const;

/** A part that a page has besides, where the work can hurt someone. */
export const safetySection = 'Safety';

const KEBAB = /^[a-z0-9]+(-[a-z0-9]+)*$/;
const roomIds = rooms.map(({ id }) => id);

const ids = (what: string) =>
  z
    .array(
      z
        .string()
        .regex(KEBAB, `Write the id of each ${what} in small letters with hyphens, as in the trade data.`),
    )
    .default([]);

/** What stands at the head of a topic page. Every id is one of the trade's: tests/content/book.test.ts looks them up. */
export const topicSchema = z.object({
  title: z
    .string()
    .min(3, 'A topic needs a title of at least three letters.')
    .max(60, 'A title of more than 60 letters does not fit the contents list.'),
  room: z.enum(roomIds as [string, ...string[]], {
    error: `"room" is the room that the page stands in: ${roomIds.join(', ')}.`,
  }),
  order: z.number({ error: '"order" is a number: where the page stands within its room.' }).int().positive(),
  lede: z
    .string()
    .min(40, 'The lede says in a sentence or two what the page is for: at least 40 letters.')
    .max(320, 'Keep the lede under 320 letters.'),
  decisions: ids('question').refine((list) => list.every((id) => decisionById(id)), {
    error: ({ input }) =>
      `No such question: ${(input as string[]).filter((id) => !decisionById(id)).join(', ')}. See src/calc/subsystems.`,
  }),
  checks: ids('check'),
  parts: ids('part'),
  tasks: ids('task'),
  risks: ids('risk'),
  sources: z
    .array(z.string().min(10, 'A source says what was printed where, or that it is common practice.'))
    .min(1, 'Say where the figures come from, even if it is common practice.'),
});

export type Topic = z.infer<typeof topicSchema>;
