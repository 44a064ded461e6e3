import * as z from 'zod/mini';
import { limits, SHELF_FORMAT, SHELF_VERSION } from './limits.ts';
import { fileShape, nameShape, savedShape } from './path-schema.ts';

export const idShape = z.string().check(z.regex(limits.pathId));

/** A moment in UTC: 2027-01-04T08:00:00.000Z. */
export const momentShape = z.string().check(
  z.regex(/^\d{4}-\d{2}-\d{2}T\d{2}:\d{2}:\d{2}(\.\d{1,3})?Z$/),
  z.refine((text) => !Number.isNaN(Date.parse(text))),
);

export const originShape = z.strictObject({ id: idShape, name: nameShape });

/** Many paths in one file, each as a file of one path has it. Published as public/schema/shelf-1.json. */
export const shelfShape = z.strictObject({
  format: z.literal(SHELF_FORMAT),
  version: z.literal(SHELF_VERSION),
  saved: z.optional(savedShape),
  paths: z
    .array(
      z.strictObject({
        id: idShape,
        made: z.optional(momentShape),
        changed: z.optional(momentShape),
        from: z.optional(originShape),
        file: fileShape,
      }),
    )
    .check(z.maxLength(limits.paths)),
  unread: z.optional(z.array(z.strictObject({ id: z.string(), text: z.string() }))),
});
