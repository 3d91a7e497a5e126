import { Worker } from 'node:worker_threads';
import type { EntryMeasurement } from '../../../shared/entry/measurement/measurement.js';
import type { ShownDesign } from './shown-design.js';

/** Runs from the sources in tests, and compiled otherwise; only sources need the loader of TypeScript. */
const FROM_SOURCES = import.meta.url.endsWith('.ts');
const ENTRY = new URL(FROM_SOURCES ? './design-thread.ts' : './design-thread.js', import.meta.url);

/** A thread has no loader of its own: this one brings TypeScript's before it reads the entry. */
const LOADED = `import('tsx/esm/api').then(({ register }) => { register(); return import(${JSON.stringify(ENTRY.href)}); });`;

/** Designs an entry beside the service's own thread. @throws Error when the thread fails. */
export function runDesign(measurement: EntryMeasurement): Promise<ShownDesign> {
  const worker = FROM_SOURCES
    ? new Worker(LOADED, { eval: true, workerData: measurement })
    : new Worker(ENTRY, { workerData: measurement });
  // Nobody need wait for a design when the process comes to its end.
  worker.unref();
  return new Promise((resolve, reject) => {
    worker.once('message', resolve);
    worker.once('error', reject);
    worker.once('exit', () => reject(new Error('The thread that designs an entry ended without a result.')));
  });
}
