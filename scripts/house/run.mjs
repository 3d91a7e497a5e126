import { spawn } from 'node:child_process';
import { root } from './root.mjs';

const guard = new URL('./end-with-parent.mjs', import.meta.url).href;

/**
 * Runs a program of Node's to its end; it ends as well when this process is killed.
 *
 * @param {string[]} args what follows `node`
 * @param {{env?: Record<string, string>, quiet?: boolean}} [options] `quiet` keeps the output back unless it fails
 * @returns {Promise<void>} fails with the end of the output when the program does
 */
export function runNode(args, { env = {}, quiet = false } = {}) {
  return new Promise((resolve, reject) => {
    const output = quiet ? 'pipe' : 'inherit';
    const child = spawn(process.execPath, ['--import', guard, ...args], {
      cwd: root,
      env: { ...process.env, ...env },
      stdio: ['ignore', output, output, 'ipc'],
    });
    const name = args.find((arg) => !arg.startsWith('-') && arg !== 'tsx');
    let kept = '';
    for (const stream of [child.stdout, child.stderr]) stream?.on('data', (chunk) => (kept += chunk));
    child.once('error', reject);
    child.once('close', (code, signal) => {
      if (code === 0) resolve();
      else reject(new Error(`${name} ended with ${signal ?? code}.\n${kept.slice(-4000)}`.trim()));
    });
  });
}
