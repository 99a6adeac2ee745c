import { mkdirSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { schemaFiles } from './schemas.ts';

/** Writes `docs/schema` anew: `node main/schema/write.ts`. A test fails when it was forgotten. */
const folder = join(import.meta.dirname, '..', '..', 'docs', 'schema');
mkdirSync(folder, { recursive: true });
for (const [name, text] of schemaFiles()) writeFileSync(join(folder, name), text);
