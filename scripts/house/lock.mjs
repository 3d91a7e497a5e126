import { linkSync, mkdirSync, readFileSync, renameSync, rmSync, writeFileSync } from 'node:fs';
import { dirname } from 'node:path';
import { setTimeout as sleep } from 'node:timers/promises';

/*
 * A lock is a file that names its holder. A holder that was killed is known by its process being gone, or by its
 * number having gone to a process that started at another time.
 */

/** State and start of a process as the system counts it; undefined where the system does not tell. */
function statOf(pid) {
  try {
    const stat = readFileSync(`/proc/${pid}/stat`, 'utf8');
    const fields = stat.slice(stat.lastIndexOf(')') + 2).split(' ');
    return { state: fields[0], start: fields[19] };
  } catch {
    return undefined;
  }
}

/** When a process started, in the system's own count; undefined where the system does not tell. */
export function startOf(pid) {
  return statOf(pid)?.start;
}

/** Whether the process that is named by number and start still runs; one that is only not yet buried does not. */
export function runs({ pid, start }) {
  try {
    process.kill(pid, 0);
  } catch (error) {
    if (error.code !== 'EPERM') return false;
  }
  const stat = statOf(pid);
  if (stat?.state === 'Z' || stat?.state === 'X') return false;
  return start === undefined || stat === undefined || stat.start === start;
}

const self = () => ({ pid: process.pid, start: startOf(process.pid) });

function entryIn(file) {
  try {
    return JSON.parse(readFileSync(file, 'utf8'));
  } catch {
    return undefined;
  }
}

/** The holder's entry, or undefined when nobody alive holds the lock. */
export function holderOf(file) {
  const entry = entryIn(file);
  return entry && runs(entry) ? entry : undefined;
}

const ownFile = (file, what) => `${file}.${process.pid}.${what}`;

/** Clears a dead holder's file away; puts it back when somebody alive has taken the lock in between. */
function clearDead(file) {
  const aside = ownFile(file, 'dead');
  try {
    renameSync(file, aside);
    if (holderOf(aside)) linkSync(aside, file);
  } catch (error) {
    if (error.code !== 'ENOENT' && error.code !== 'EEXIST') throw error;
  } finally {
    rmSync(aside, { force: true });
  }
}

/**
 * Takes the lock if nobody alive holds it. Its file appears with its content at once, so nobody can read half of it.
 *
 * @returns {{release(): void, tell(more: object): void} | undefined} undefined when somebody holds it; `tell` adds to
 *   the entry that others read
 */
export function tryLock(file) {
  mkdirSync(dirname(file), { recursive: true });
  const draft = ownFile(file, 'new');
  const write = (entry) => writeFileSync(draft, JSON.stringify(entry));
  for (let tries = 0; tries < 5; tries += 1) {
    write(self());
    try {
      linkSync(draft, file);
      return {
        release: () => {
          if (entryIn(file)?.pid === process.pid) rmSync(file, { force: true });
        },
        tell: (more) => {
          write({ ...self(), ...more });
          renameSync(draft, file);
        },
      };
    } catch (error) {
      if (error.code !== 'EEXIST') throw error;
      if (holderOf(file)) return undefined;
      clearDead(file);
    } finally {
      rmSync(draft, { force: true });
    }
  }
  return undefined;
}

/** Does the work while holding the lock, after whoever holds it now. */
export async function withLock(file, work, waiting = () => undefined) {
  let lock = tryLock(file);
  if (!lock) waiting();
  while (!lock) {
    await sleep(200);
    lock = tryLock(file);
  }
  try {
    return await work();
  } finally {
    lock.release();
  }
}
