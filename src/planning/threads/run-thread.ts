import { Worker } from 'node:worker_threads';
import type { ThreadAnswers, ThreadData, ThreadMessage, ThreadTask } from './thread-task.js';

/** A task that runs in a thread. */
export interface RunningThread<T> {
  /** What it found. @throws Error when the thread fails or is ended. */
  readonly result: Promise<T>;
  /** Asks it to come to an end soon with what it has. */
  stop(): void;
  /** Ends it at once; there is no result then. */
  end(): Promise<void>;
}

/** Runs from the sources in tests, and compiled otherwise; only sources need the loader of TypeScript. */
const FROM_SOURCES = import.meta.url.endsWith('.ts');
const ENTRY = new URL(FROM_SOURCES ? './plan-thread.ts' : './plan-thread.js', import.meta.url);

/** A thread has no loader of its own: this one brings TypeScript's before it reads the entry. */
const fromSources = ({ href }: URL): string =>
  `import('tsx/esm/api').then(({ register }) => { register(); return import(${JSON.stringify(href)}); });`;

/** Computes something long beside the service's own thread. */
export function runThread<K extends ThreadTask['kind']>(
  task: Extract<ThreadTask, { kind: K }>,
  onProgress: (progress: ThreadAnswers[K]['progress'], seconds: number) => void = () => undefined,
): RunningThread<ThreadAnswers[K]['result']> {
  const stop = new Int32Array(new SharedArrayBuffer(4));
  const worker = FROM_SOURCES
    ? new Worker(fromSources(ENTRY), { eval: true, workerData: { task, stop } satisfies ThreadData })
    : new Worker(ENTRY, { workerData: { task, stop } satisfies ThreadData });
  const result = new Promise<ThreadAnswers[K]['result']>((resolve, reject) => {
    worker.on('message', (message: ThreadMessage) => {
      if (message.kind === 'progress') onProgress(message.progress as never, message.seconds);
      else resolve(message.result as never);
    });
    worker.once('error', reject);
    worker.once('exit', () => reject(new Error('The thread ended without a result.')));
  });
  // Whoever ends a thread need not wait for its result.
  result.catch(() => undefined);
  return {
    result,
    stop: () => void Atomics.store(stop, 0, 1),
    end: async () => void (await worker.terminate()),
  };
}
