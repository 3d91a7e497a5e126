import { readdirSync, readFileSync, writeFileSync } from 'node:fs';
import { codegen } from '@graphql-codegen/core';
import * as typescript from '@graphql-codegen/typescript';
import * as typescriptOperations from '@graphql-codegen/typescript-operations';
import * as typedDocumentNode from '@graphql-codegen/typed-document-node';
import { buildSchema, parse } from 'graphql';
import { format, resolveConfig } from 'prettier';

/*
 * Writes the documents of the board and of the closing record from schema.graphql and their operations, so that a field the
 * API does not have is a compile error; with --check it only compares and exits with 1 when a file is stale.
 */

/** Who asks the API: where the operations lie, and the file that is written from them. */
const CALLERS = [
  {
    name: 'board/api/documents.ts',
    operations: new URL('../board/api/operations/', import.meta.url),
    target: new URL('../board/api/documents.ts', import.meta.url),
  },
  {
    name: 'src/records/api/documents.ts',
    operations: new URL('../src/records/api/operations/', import.meta.url),
    target: new URL('../src/records/api/documents.ts', import.meta.url),
  },
];
const SCHEMA = new URL('../schema.graphql', import.meta.url);

const HEADER = '// Written by scripts/client-documents.ts from the schema and the operations; do not edit.\n';

/** The text that a committed file must hold. */
async function documentsText(operations: URL, target: URL): Promise<string> {
  const schemaText = readFileSync(SCHEMA, 'utf8');
  const output = await codegen({
    filename: 'documents.ts',
    schema: parse(schemaText),
    schemaAst: buildSchema(schemaText),
    documents: readdirSync(operations)
      .sort()
      .map((name) => ({ location: name, document: parse(readFileSync(new URL(name, operations), 'utf8')) })),
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
  const style = await resolveConfig(target);
  return format(`${HEADER}${output}\n`, { ...style, parser: 'typescript' });
}

for (const { name, operations, target } of CALLERS) {
  const text = await documentsText(operations, target);
  if (!process.argv.includes('--check')) {
    writeFileSync(target, text);
    process.stdout.write(`Wrote ${name}\n`);
  } else if (readFileSync(target, 'utf8') === text) {
    process.stdout.write(`${name} is fresh.\n`);
  } else {
    process.stdout.write(`${name} is stale; run "npm run documents".\n`);
    process.exitCode = 1;
  }
}
