import { spawn } from 'node:child_process';
import { prepare } from './house/prepare.mjs';
import { root } from './house/root.mjs';
import { tell } from './house/tell.mjs';

/*
 * npm run bench -- <name> [options] [--json]
 *
 * Benchmarks use the pure core alone, so packages are all they need.
 */

await tell(() => prepare({ upTo: 'install', say: (text) => process.stderr.write(`${text}\n`) }));
const child = spawn(process.execPath, ['--import', 'tsx', 'bench/main.ts', ...process.argv.slice(2)], {
  cwd: root,
  stdio: 'inherit',
});
for (const signal of ['SIGINT', 'SIGTERM', 'SIGHUP']) process.on(signal, () => child.kill(signal));
child.once('exit', (code) => process.exit(code ?? 1));
