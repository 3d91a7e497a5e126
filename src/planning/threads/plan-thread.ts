import { parentPort, workerData } from 'node:worker_threads';
import { improve } from '../../../shared/schedule/improve/improve.js';
import { risk } from '../../../shared/schedule/risk/risk.js';
import type { ThreadData, ThreadMessage, ThreadTask } from './thread-task.js';

/* Runs in a thread of its own, so that requests, mails and the queue go on while it computes. It reads the core and nothing else. */

/** Progress is told this often at most. */
const TELL_EVERY_MILLISECONDS = 200;

const { task, stop } = workerData as ThreadData;
const began = performance.now();
const elapsed = (): number => performance.now() - began;
const say = (message: ThreadMessage): void => parentPort?.postMessage(message);

let told = -Infinity;
function onProgress(progress: unknown): void {
  if (elapsed() - told < TELL_EVERY_MILLISECONDS) return;
  told = elapsed();
  say({ kind: 'progress', progress, seconds: told / 1000 });
}

const stopped = (): boolean => Atomics.load(stop, 0) !== 0;

function work(given: ThreadTask): unknown {
  if (given.kind === 'risk') {
    const { input, model, seed, samples } = given;
    return risk(input, model, { seed, samples, stop: stopped, onProgress });
  }
  const { input, seed, weights, seconds } = given;
  const over = (): boolean => stopped() || elapsed() >= seconds * 1000;
  return improve(input, { seed, stop: over, onProgress, weights });
}

say({ kind: 'result', result: work(task) });
