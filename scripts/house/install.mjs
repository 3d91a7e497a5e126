import { spawn } from 'node:child_process';
import { existsSync, readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { fingerprint } from './fingerprint.mjs';
import { root } from './root.mjs';

const marker = join(root, 'node_modules', '.flagway-installed');

/** Whether every package of the lock file lies in node_modules in its version. */
function matchesLock() {
  const installed = join(root, 'node_modules', '.package-lock.json');
  if (!existsSync(installed)) return false;
  const have = JSON.parse(readFileSync(installed, 'utf8')).packages;
  const want = JSON.parse(readFileSync(join(root, 'package-lock.json'), 'utf8')).packages;
  return Object.entries(want).every(
    ([path, entry]) => path === '' || entry.optional || have[path]?.version === entry.version,
  );
}

function npmCi() {
  // The npm that runs us, or the one in the path.
  const [program, first] = process.env.npm_execpath
    ? [process.execPath, [process.env.npm_execpath]]
    : [process.platform === 'win32' ? 'npm.cmd' : 'npm', []];
  const args = ['ci', '--include=dev', '--ignore-scripts', '--no-audit', '--no-fund', '--loglevel=error'];
  return new Promise((resolve, reject) => {
    const child = spawn(program, [...first, ...args], { cwd: root, stdio: ['ignore', 'inherit', 'inherit'] });
    child.once('error', reject);
    child.once('close', (code) =>
      code === 0
        ? resolve()
        : reject(
            new Error(
              'The packages could not be installed. Check the network to the npm registry and try again.',
            ),
          ),
    );
  });
}

/** Installs the packages of package-lock.json when they are missing or differ. */
export async function install(say) {
  const wanted = fingerprint(['package-lock.json']);
  if (existsSync(marker) && readFileSync(marker, 'utf8') === wanted) return;
  if (!matchesLock()) {
    say('Installing packages (once; about half a minute) ...');
    await npmCi();
  }
  writeFileSync(marker, wanted);
}
