import { readdirSync, readFileSync, writeFileSync } from 'node:fs';
import { codegen } from '@graphql-codegen/core';
import * as typescript from '@graphql-codegen/typescript';
import * as typescriptOperations from '@graphql-codegen/typescript-operations';
import * as typedDocumentNode from '@graphql-codegen/typed-document-node';
import { buildSchema, parse } from 'graphql';
import { format, resolveConfig } from 'prettier';

/*
 * Writes board/api/documents.ts from schema.graphql and the operations of the board, so that a field the API does not
 * have is a compile error; with --check it only compares and exits with 1 when the file is stale.
 */

const OPERATIONS = new URL('../board/api/operations/', import.meta.url);
const TARGET = new URL('../board/api/documents.ts', import.meta.url);
const SCHEMA = new URL('../schema.graphql', import.meta.url);

const HEADER = '// Written by scripts/client-documents.ts from the schema and the operations; do not edit.\n';

/** The text that the committed file must hold. */
async function documentsText(): Promise<string> {
  const schemaText = readFileSync(SCHEMA, 'utf8');
  const output = await codegen({
    filename: 'documents.ts',
    schema: parse(schemaText),
    schemaAst: buildSchema(schemaText),
    documents: readdirSync(OPERATIONS)
      .sort()
      .map((name) => ({ location: name, document: parse(readFileSync(new URL(name, OPERATIONS), 'utf8')) })),
    config: {
      documentMode: 'string',
      enumsAsTypes: true,
      onlyOperationTypes: true,
      immutableTypes: true,
      skipTypename: true,
      useTypeImports: true,
      avoidOptionals: { field: true, inputValue: false, object: true, defaultValue: false },
      scalars: { DateTime: 'string' },
    },
    plugins: [{ typescript: {} }, { typescriptOperations: {} }, { typedDocumentNode: {} }],
    pluginMap: { typescript, typescriptOperations, typedDocumentNode },
  });
  const style = await resolveConfig(TARGET);
  return format(`${HEADER}${output}\n`, { ...style, parser: 'typescript' });
}

const text = await documentsText();
if (process.argv.includes('--check')) {
  const fresh = readFileSync(TARGET, 'utf8') === text;
  process.stdout.write(
    fresh
      ? 'board/api/documents.ts is fresh.\n'
      : 'board/api/documents.ts is stale; run "npm run documents".\n',
  );
  process.exitCode = fresh ? 0 : 1;
} else {
  writeFileSync(TARGET, text);
  process.stdout.write('Wrote board/api/documents.ts\n');
}
