import { z } from 'zod';

/** The parts that the introduction of every room has, in their order. */
export const roomSections = [
  'What this room is',
  'How the pieces hang together',
  'In which order to decide',
  'What newcomers get wrong',
] as const;

/** What stands at the head of a room's introduction; the file is named after the room. */
export const roomIntroSchema = z.object({
  read: z
    .array(
      z
        .string()
        .regex(
          /^[a-z0-9]+(-[a-z0-9]+)*$/,
          'Write the id of each topic page in small letters with hyphens, as its file is named.',
        ),
    )
    .min(1, 'Name at least one topic page to read, the first one first.'),
});
