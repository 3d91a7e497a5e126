import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { setTimeout as sleep } from 'node:timers/promises';
import { holderOf, runs, tryLock } from '../house/lock.mjs';
import { root } from '../house/root.mjs';

const file = join(root, '.flagway', 'start.lock');

/** Ends a process: politely, then by force. */
async function end(process_, milliseconds) {
  for (const signal of ['SIGTERM', 'SIGKILL']) {
    if (!runs(process_)) return;
    try {
      process.kill(process_.pid, signal);
    } catch {
      return;
    }
    const until = performance.now() + milliseconds;
    while (runs(process_) && performance.now() < until) await sleep(50);
  }
}

/**
 * Makes this the one start of the project folder. A start that lost its npm, and a service that lost its start, are
 * ended first.
 *
 * @returns the lock, or `{running}` with the entry of a start that is alive and well
 */
export async function takePlace() {
  const last = lastEntry();
  const holder = holderOf(file);
  if (holder) {
    if (!holder.npm || runs(holder.npm)) return { running: holder };
    await end(holder, 20_000);
  }
  // The service notices that its start is gone and stops by itself; wait until it has.
  if (last?.service && runs(last.service)) {
    const until = performance.now() + 5000;
    while (runs(last.service) && performance.now() < until) await sleep(50);
    await end(last.service, 5000);
  }
  const lock = tryLock(file);
  if (!lock) return { running: holderOf(file) ?? {} };
  return { lock };
}

function lastEntry() {
  try {
    return JSON.parse(readFileSync(file, 'utf8'));
  } catch {
    return undefined;
  }
}
