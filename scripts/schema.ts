// Writes public/schema/path-1.json, the published shape of a saved path, from the schema that reading checks against.
import { mkdirSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { publishedSchema } from '../src/export/published-schema.ts';

const folder = join(import.meta.dirname, '..', 'public', 'schema');
mkdirSync(folder, { recursive: true });
writeFileSync(join(folder, 'path-1.json'), publishedSchema());
