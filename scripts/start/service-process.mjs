import { fork } from 'node:child_process';
import { join } from 'node:path';
import { root } from '../house/root.mjs';

/**
 * Starts the compiled service in a process of its own, which ends by itself when this one dies.
 *
 * @param {Record<string, string>} env settings beside those of this process
 * @returns the child and a promise that resolves when it says that it serves
 */
export function startService(env) {
  const child = fork(join(root, 'dist', 'src', 'main.js'), [], {
    cwd: root,
    env: { ...process.env, ...env },
    execArgv: ['--enable-source-maps'],
    stdio: ['ignore', 'inherit', 'inherit', 'ipc'],
  });
  const ready = new Promise((resolve, reject) => {
    child.on('message', (message) => {
      if (message?.ready) resolve(message);
    });
    child.once('error', reject);
    child.once('exit', (code, signal) =>
      reject(new Error(`The service did not start (${signal ?? code}); see what it said above.`)),
    );
  });
  const ended = new Promise((resolve) => child.once('exit', (code, signal) => resolve(signal ?? code)));
  return {
    pid: child.pid,
    ready,
    ended,
    /** Lets it finish what it does; by force when that takes too long. */
    async stop(milliseconds = 15_000) {
      if (child.exitCode !== null || child.signalCode !== null) return;
      child.kill('SIGTERM');
      const timer = setTimeout(() => child.kill('SIGKILL'), milliseconds);
      await ended;
      clearTimeout(timer);
    },
  };
}
