import { readFile } from 'node:fs/promises';
import { createRequire } from 'node:module';
import {
  bindMigrationAwareSqlAdapterFactory,
  type SqlMigrationAwareDriverAdapterFactory,
} from '@prisma/driver-adapter-utils';
import type { SchemaEngine } from '@prisma/schema-engine-wasm';

/** What the generated bindings of the engine export beside the class. */
interface Bindings {
  SchemaEngine: {
    new (...never: never): SchemaEngine;
    new: (typeof SchemaEngine)['new'];
  };
  __wbg_set_wasm(exports: WebAssembly.Exports): void;
}

/** The Prisma schema by file name. */
export type SchemaFiles = readonly (readonly [name: string, text: string])[];

let loaded: Promise<Bindings> | undefined;

/** Compiles the engine once a process: its bindings know one instance only. */
async function loadBindings(): Promise<Bindings> {
  const require = createRequire(import.meta.url);
  const bindingsPath = require.resolve('@prisma/schema-engine-wasm/schema_engine_bg');
  const bindings = (await import(bindingsPath)) as Bindings;
  const bytes = await readFile(bindingsPath.replace(/\.js$/, '.wasm'));
  const { instance } = await WebAssembly.instantiate(bytes, {
    './schema_engine_bg.js': bindings as unknown as WebAssembly.ModuleImports,
  });
  // Where the engine reports a panic; without it the report itself fails and hides the reason.
  Object.assign(globalThis, {
    PRISMA_WASM_PANIC_REGISTRY: { set_message: (text: string) => process.stderr.write(`${text}\n`) },
  });
  bindings.__wbg_set_wasm(instance.exports);
  (instance.exports['__wbindgen_start'] as () => void)();
  return bindings;
}

/**
 * Loads the schema engine from its package, which needs no download. A timer inside keeps the process alive for ten
 * seconds after use: run it in a process that exits by itself.
 */
export async function loadEngine(
  schema: SchemaFiles,
  adapter: SqlMigrationAwareDriverAdapterFactory,
): Promise<SchemaEngine> {
  loaded ??= loadBindings();
  const bindings = await loaded;
  return bindings.SchemaEngine.new(
    { datamodels: schema.map(([name, text]) => [name, text]) },
    () => undefined,
    bindMigrationAwareSqlAdapterFactory(adapter),
  );
}
