import { spawn } from 'node:child_process';
import { root } from './house/root.mjs';

/* Runs the tests, then the checks, and closes with the counts of both on one line. */

/** Runs a script of package.json, passing its output on; reads the counts from its last lines. */
function npmRun(name) {
  return new Promise((resolve) => {
    const child = spawn(process.execPath, [`scripts/${name}.mjs`], {
      cwd: root,
      stdio: ['ignore', 'pipe', 'inherit'],
    });
    let tail = '';
    child.stdout.on('data', (chunk) => {
      process.stdout.write(chunk);
      tail = (tail + chunk).slice(-2000);
    });
    child.once('close', (code) => {
      const [passed, failed] = (/(\d+) passed, (\d+) failed\s*$/.exec(tail) ?? []).slice(1).map(Number);
      if (passed === undefined) resolve({ passed: 0, failed: 1 });
      else resolve({ passed, failed: failed === 0 && code !== 0 ? 1 : failed });
    });
  });
}

const tests = await npmRun('test');
const checks = await npmRun('check');
const failed = tests.failed + checks.failed;
process.stdout.write(`\n${tests.passed + checks.passed} passed, ${failed} failed\n`);
process.exit(failed === 0 ? 0 : 1);
