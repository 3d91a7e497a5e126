import { spawn } from 'node:child_process';
import { root } from '../house/root.mjs';

/**
 * Runs a program of Node's and keeps its output back.
 *
 * @returns {Promise<{ok: boolean, output: string}>}
 */
export function nodeStep(...args) {
  return new Promise((resolve) => {
    const child = spawn(process.execPath, args, { cwd: root, stdio: ['ignore', 'pipe', 'pipe'] });
    let output = '';
    for (const stream of [child.stdout, child.stderr]) stream.on('data', (chunk) => (output += chunk));
    child.once('error', (error) => resolve({ ok: false, output: error.message }));
    child.once('close', (code) => resolve({ ok: code === 0, output: output.trim() }));
  });
}
