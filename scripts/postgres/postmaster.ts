import { existsSync, readdirSync, readFileSync, readlinkSync, realpathSync } from 'node:fs';
import { join } from 'node:path';
import { setTimeout as sleep } from 'node:timers/promises';

/** A running database server, as its own note `postmaster.pid` in the data folder describes it. */
export interface Postmaster {
  readonly pid: number;
  readonly port: number;
  readonly ready: boolean;
}

/** Whether a process has ended but is not yet buried by its parent. */
function unburied(pid: number): boolean {
  try {
    const stat = readFileSync(`/proc/${pid}/stat`, 'utf8');
    return /^[ZX]/.test(stat.slice(stat.lastIndexOf(')') + 2));
  } catch {
    return false;
  }
}

/** Whether a process runs. */
export function alive(pid: number): boolean {
  try {
    process.kill(pid, 0);
  } catch (error) {
    return (error as NodeJS.ErrnoException).code === 'EPERM';
  }
  return !unburied(pid);
}

/** The folder a process works in, or undefined where the system does not tell. */
function workingFolder(pid: number | string): string | undefined {
  try {
    return readlinkSync(`/proc/${pid}/cwd`);
  } catch {
    return undefined;
  }
}

/** Reads the note of a data folder; undefined when no server of that folder runs. */
export function findPostmaster(dataFolder: string): Postmaster | undefined {
  const note = join(dataFolder, 'postmaster.pid');
  if (!existsSync(note)) return undefined;
  const lines = readFileSync(note, 'utf8').split('\n');
  const pid = Number(lines[0]);
  if (!Number.isInteger(pid) || pid <= 0 || !alive(pid)) return undefined;
  // A number that was given to another process since: a server works in its data folder.
  const folder = workingFolder(pid);
  if (existsSync('/proc/self/cwd') && folder !== realpathSync(dataFolder)) return undefined;
  return { pid, port: Number(lines[3]), ready: (lines[7] ?? '').trim() === 'ready' };
}

/** Processes a killed server left behind, which still hold its shared memory. */
export function orphansOf(dataFolder: string): readonly number[] {
  if (!existsSync('/proc/self/cwd') || !existsSync(dataFolder)) return [];
  const real = realpathSync(dataFolder);
  const server = findPostmaster(dataFolder)?.pid;
  return readdirSync('/proc')
    .filter((name) => /^\d+$/.test(name) && workingFolder(name) === real)
    .map(Number)
    .filter((pid) => pid !== server && pid !== process.pid);
}

/** Waits until a condition holds; false when it does not within the time. */
export async function until(condition: () => boolean, milliseconds: number): Promise<boolean> {
  const end = performance.now() + milliseconds;
  while (!condition()) {
    if (performance.now() > end) return false;
    await sleep(30);
  }
  return true;
}

/** Stops a server: fast (clients are cut off, everything is written), and at once when that takes too long. */
export async function stopPostmaster(pid: number, milliseconds = 30_000): Promise<void> {
  for (const signal of ['SIGINT', 'SIGQUIT', 'SIGKILL'] as const) {
    if (!alive(pid)) return;
    try {
      process.kill(pid, signal);
    } catch (error) {
      if ((error as NodeJS.ErrnoException).code !== 'ESRCH') throw error;
      return;
    }
    if (await until(() => !alive(pid), milliseconds)) return;
  }
}
