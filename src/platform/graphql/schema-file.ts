import { readFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { type GraphQLSchema, lexicographicSortSchema, printSchema } from 'graphql';

const HEADER = '# Written by "npm run schema" from the code; do not edit.\n\n';

/** Path of the committed schema, seen from the source tree or from the compiled one. */
export function schemaFilePath(): string {
  const inDist = import.meta.url.includes('/dist/');
  return fileURLToPath(new URL(`${inDist ? '../' : ''}../../../schema.graphql`, import.meta.url));
}

/** The text that the committed file must hold. */
export function schemaText(schema: GraphQLSchema): string {
  return `${HEADER}${printSchema(lexicographicSortSchema(schema))}\n`;
}

/**
 * Refuses to serve a schema that differs from the committed one, which clients were generated from.
 *
 * @throws Error telling to write it anew.
 */
export function demandFreshSchema(schema: GraphQLSchema): void {
  const committed = readFileSync(schemaFilePath(), 'utf8');
  if (committed !== schemaText(schema)) {
    throw new Error('schema.graphql differs from the code; run "npm run schema" and commit it.');
  }
}
