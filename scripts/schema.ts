// Writes public/schema/*.json, the published shapes of a saved path and of a saved shelf, from what reading checks against.
import { mkdirSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { publishedSchema, publishedShelfSchema } from '../src/export/published-schema.ts';

const folder = join(import.meta.dirname, '..', 'public', 'schema');
mkdirSync(folder, { recursive: true });
writeFileSync(join(folder, 'path-1.json'), publishedSchema());
writeFileSync(join(folder, 'shelf-1.json'), publishedShelfSchema());
