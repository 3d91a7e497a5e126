import { rmSync } from 'node:fs';

/*
 * Ends a throwaway server when the process that started it ends, however it ends: that process holds the other end of
 * this one's input, which closes with it.
 *
 * node watchdog.mjs <process id of the server> <folder to remove>
 */

const [pid, folder] = [Number(process.argv[2]), process.argv[3]];

const alive = () => {
  try {
    process.kill(pid, 0);
    return true;
  } catch {
    return false;
  }
};

function end() {
  try {
    process.kill(pid, 'SIGQUIT');
  } catch {
    // It has ended by itself.
  }
  let patience = 200;
  const timer = setInterval(() => {
    patience -= 1;
    if (alive() && patience > 0) return;
    if (alive()) process.kill(pid, 'SIGKILL');
    clearInterval(timer);
    rmSync(folder, { recursive: true, force: true, maxRetries: 5 });
    process.exit(0);
  }, 50);
}

for (const signal of ['SIGINT', 'SIGTERM', 'SIGHUP']) process.on(signal, () => undefined);
process.stdin.resume();
process.stdin.on('end', end);
process.stdin.on('error', end);
