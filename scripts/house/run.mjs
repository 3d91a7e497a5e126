import { spawn } from 'node:child_process';
import { root } from './root.mjs';

/**
 * Runs a program of Node's to its end.
 *
 * @param {string[]} args what follows `node`
 * @param {{env?: Record<string, string>, quiet?: boolean}} [options] `quiet` keeps the output back unless it fails
 * @returns {Promise<void>} fails with the end of the output when the program does
 */
export function runNode(args, { env = {}, quiet = false } = {}) {
  return new Promise((resolve, reject) => {
    const child = spawn(process.execPath, args, {
      cwd: root,
      env: { ...process.env, ...env },
      stdio: quiet ? ['ignore', 'pipe', 'pipe'] : ['ignore', 'inherit', 'inherit'],
    });
    const name = args.find((arg) => !arg.startsWith('-') && arg !== 'tsx');
    let output = '';
    for (const stream of [child.stdout, child.stderr]) stream?.on('data', (chunk) => (output += chunk));
    child.once('error', reject);
    child.once('close', (code, signal) => {
      if (code === 0) resolve();
      else reject(new Error(`${name} ended with ${signal ?? code}.\n${output.slice(-4000)}`.trim()));
    });
  });
}
