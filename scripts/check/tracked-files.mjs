import { execFileSync } from 'node:child_process';
import { existsSync } from 'node:fs';
import { join } from 'node:path';
import { root } from '../house/root.mjs';

/** Files of the project, from the root: what git tracks and what it would track if it were added. */
export function trackedFiles() {
  const list = execFileSync('git', ['ls-files', '-z', '--cached', '--others', '--exclude-standard'], {
    cwd: root,
    encoding: 'utf8',
    maxBuffer: 64 * 1024 * 1024,
  });
  return list.split('\0').filter((path) => path !== '' && existsSync(join(root, path)));
}
