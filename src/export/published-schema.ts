import * as z from 'zod/mini';
import { fileShape } from './path-schema.ts';

/** The text of public/schema/path-1.json (JSON Schema, draft 2020-12). `node scripts/schema.ts` writes it; a test holds it. */
export function publishedSchema(): string {
  const schema = z.toJSONSchema(fileShape);
  const about = {
    title: 'One lathe and what its owner has said about it',
    description:
      'A file saved by the conversion planner and read by it again. Figures are SI; money is decimal text as typed. Ids are those of the questions, parts and risks on the site.',
  };
  return `${JSON.stringify({ $schema: schema.$schema, ...about, ...schema }, null, 2)}\n`;
}
