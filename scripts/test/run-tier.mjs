import { spawn } from 'node:child_process';
import { mkdtempSync, readFileSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { root } from '../house/root.mjs';

const LIMIT_MINUTES = 25;

function jest(args, counts) {
  return new Promise((resolve) => {
    const child = spawn(
      process.execPath,
      [
        '--experimental-vm-modules',
        '--disable-warning=ExperimentalWarning',
        'node_modules/jest/bin/jest.js',
        ...args,
      ],
      {
        cwd: root,
        stdio: ['ignore', 'inherit', 'inherit'],
        env: { ...process.env, NODE_ENV: 'test', TEST_COUNTS: counts },
      },
    );
    const timer = setTimeout(() => {
      process.stderr.write(`The tier did not end within ${LIMIT_MINUTES} minutes and is stopped.\n`);
      child.kill('SIGKILL');
    }, LIMIT_MINUTES * 60_000);
    child.once('close', (code) => {
      clearTimeout(timer);
      resolve(code ?? 1);
    });
  });
}

/**
 * Runs one tier of tests.
 *
 * @param {{name: string, workers: string}} tier
 * @param {string[]} patterns parts of paths to narrow it to
 * @returns {Promise<{passed: number, failed: number}>} a file that cannot be run, or a tier without tests, counts as a
 *   failure
 */
export async function runTier(tier, patterns) {
  const folder = mkdtempSync(join(tmpdir(), 'flagway-tests-'));
  const counts = join(folder, 'counts.json');
  try {
    const code = await jest(
      [
        ...patterns,
        ...['--selectProjects', tier.name, '--maxWorkers', tier.workers],
        ...['--reporters', 'default', '--reporters', './scripts/test/count-reporter.mjs'],
      ],
      counts,
    );
    const { passed, failed } = JSON.parse(readFileSync(counts, 'utf8'));
    return { passed, failed: failed === 0 && code !== 0 ? 1 : failed };
  } catch {
    process.stderr.write(`The tier ${tier.name} ended without saying its counts.\n`);
    return { passed: 0, failed: 1 };
  } finally {
    rmSync(folder, { recursive: true, force: true });
  }
}
