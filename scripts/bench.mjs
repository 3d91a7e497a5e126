import { spawn } from 'node:child_process';
import { join } from 'node:path';
import { BENCHMARKS } from './house/compile.mjs';
import { prepare } from './house/prepare.mjs';
import { root } from './house/root.mjs';
import { tell } from './house/tell.mjs';

/*
 * npm run bench -- <name> [options] [--json]
 *
 * Benchmarks use the pure core alone, so packages are all they need. They run compiled, as the service does.
 */

await tell(() => prepare({ upTo: 'benchmarks', say: (text) => process.stderr.write(`${text}\n`) }));
const main = join(BENCHMARKS.to, BENCHMARKS.entry);
const child = spawn(process.execPath, ['--enable-source-maps', main, ...process.argv.slice(2)], {
  cwd: root,
  stdio: 'inherit',
});
for (const signal of ['SIGINT', 'SIGTERM', 'SIGHUP']) process.on(signal, () => child.kill(signal));
child.once('exit', (code) => process.exit(code ?? 1));
