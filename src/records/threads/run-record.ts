import { Worker } from 'node:worker_threads';
import type { RecordFacts } from '../record-facts.js';

/** Runs from the sources in tests, and compiled otherwise; only sources need the loader of TypeScript. */
const FROM_SOURCES = import.meta.url.endsWith('.ts');
const ENTRY = new URL(FROM_SOURCES ? './record-thread.ts' : './record-thread.js', import.meta.url);

/** A thread has no loader of its own: this one brings TypeScript's before it reads the entry. */
const LOADED = `import('tsx/esm/api').then(({ register }) => { register(); return import(${JSON.stringify(ENTRY.href)}); });`;

/** Makes the file of a record beside the service's own thread. @throws Error when the thread fails. */
export function runRecord(facts: RecordFacts): Promise<Buffer> {
  const worker = FROM_SOURCES
    ? new Worker(LOADED, { eval: true, workerData: facts })
    : new Worker(ENTRY, { workerData: facts });
  return new Promise((resolve, reject) => {
    worker.once('message', (bytes: Uint8Array) => resolve(Buffer.from(bytes)));
    worker.once('error', reject);
    worker.once('exit', () => reject(new Error('The thread that makes a record ended without a result.')));
  });
}
