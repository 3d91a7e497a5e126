import { spawn } from 'node:child_process';
import { prepare } from './house/prepare.mjs';
import { root } from './house/root.mjs';
import { tell } from './house/tell.mjs';

/*
 * node scripts/with-build.mjs <file> [arguments]
 *
 * Runs a compiled program, or a script in TypeScript, after all preparations. What the preparations say goes to the
 * error output, so the program's own output can be read by a machine.
 */

const [file, ...rest] = process.argv.slice(2);

await tell(async () => {
  if (!file) throw new Error('Name the file to run.');
  await prepare({ say: (text) => process.stderr.write(`${text}\n`) });
});
const child = spawn(
  process.execPath,
  [...(file.endsWith('.ts') ? ['--import', 'tsx'] : ['--enable-source-maps']), file, ...rest],
  { cwd: root, stdio: 'inherit' },
);
for (const signal of ['SIGINT', 'SIGTERM', 'SIGHUP']) process.on(signal, () => child.kill(signal));
child.once('exit', (code) => process.exit(code ?? 1));
