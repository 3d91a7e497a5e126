import 'reflect-metadata';
import { readFileSync, writeFileSync } from 'node:fs';
import { type DynamicModule, Module, type Type } from '@nestjs/common';
import { NestFactory } from '@nestjs/core';
import { GraphQLSchemaBuilderModule, GraphQLSchemaFactory } from '@nestjs/graphql';
import { CoreModule } from './app.module.js';
import { schemaFilePath, schemaText } from './platform/graphql/schema-file.js';

/*
 * Writes schema.graphql from the code, without a database; with --check it only compares and exits with 1 when the
 * file is stale.
 */

@Module({ imports: [GraphQLSchemaBuilderModule] })
class SchemaModule {}

/** The resolver classes of a module and of everything it imports. */
function resolversOf(module: Type | DynamicModule, seen = new Set<unknown>()): Type[] {
  if (seen.has(module)) return [];
  seen.add(module);
  const target = 'module' in module ? module.module : module;
  const listed = (key: string): unknown[] =>
    (Reflect.getMetadata(key, target) as unknown[] | undefined) ?? [];
  const own = listed('providers').filter(
    (provider): provider is Type =>
      typeof provider === 'function' && Reflect.hasMetadata('graphql:resolver_type', provider),
  );
  return [...own, ...listed('imports').flatMap((inner) => resolversOf(inner as Type, seen))];
}

const app = await NestFactory.createApplicationContext(SchemaModule, { logger: false });
const text = schemaText(await app.get(GraphQLSchemaFactory).create(resolversOf(CoreModule)));
await app.close();

if (process.argv.includes('--check')) {
  const fresh = readFileSync(schemaFilePath(), 'utf8') === text;
  process.stdout.write(
    fresh ? 'schema.graphql is fresh.\n' : 'schema.graphql is stale; run "npm run schema".\n',
  );
  process.exitCode = fresh ? 0 : 1;
} else {
  writeFileSync(schemaFilePath(), text);
  process.stdout.write(`Wrote ${schemaFilePath()}\n`);
}
