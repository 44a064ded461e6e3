import * as z from 'zod/mini';
import { fileShape } from './path-schema.ts';
import { shelfShape } from './shelf-schema.ts';

/** The text of public/schema/path-1.json (JSON Schema, draft 2020-12). `node scripts/schema.ts` writes it; a test holds it. */
export const publishedSchema = (): string =>
  published(fileShape, 'One lathe and what its owner has said about it');

/** The text of public/schema/shelf-1.json. */
export const publishedShelfSchema = (): string =>
  published(shelfShape, 'All the paths of an owner, each as a file of one path has it');

function published(shape: z.ZodMiniType, title: string): string {
  const schema = z.toJSONSchema(shape);
  const description =
    'A file saved by the conversion planner and read by it again. Figures are SI; money is decimal text as typed. Ids are those of the questions, parts and risks on the site.';
  return `${JSON.stringify({ $schema: schema.$schema, title, description, ...schema }, null, 2)}\n`;
}
