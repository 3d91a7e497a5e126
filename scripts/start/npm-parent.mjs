import { readFileSync } from 'node:fs';
import { runs, startOf } from '../house/lock.mjs';

const parentOf = (pid) => {
  try {
    const stat = readFileSync(`/proc/${pid}/stat`, 'utf8');
    return Number(stat.slice(stat.lastIndexOf(')') + 2).split(' ')[1]);
  } catch {
    return 0;
  }
};

const commandOf = (pid) => {
  try {
    return readFileSync(`/proc/${pid}/cmdline`, 'utf8');
  } catch {
    return '';
  }
};

/**
 * The npm that runs this process, perhaps with a shell between; undefined when there is none or the system does not
 * tell.
 *
 * @returns {{pid: number, start: string | undefined} | undefined}
 */
export function npmParent() {
  if (!process.env.npm_lifecycle_event) return undefined;
  let pid = process.ppid;
  for (let steps = 0; steps < 3 && pid > 1; steps += 1) {
    if (/^npm |npm-cli\.js|\bnpm\0/.test(commandOf(pid))) return { pid, start: startOf(pid) };
    pid = parentOf(pid);
  }
  return undefined;
}

/** Calls back once when the npm that runs this process is gone: killed, it cannot pass the news on. */
export function whenNpmDies(npm, then) {
  if (!npm) return;
  const timer = setInterval(() => {
    if (runs(npm)) return;
    clearInterval(timer);
    then();
  }, 300);
  timer.unref();
}
