import { createHash } from 'node:crypto';
import { existsSync, readdirSync, readFileSync, statSync } from 'node:fs';
import { join, relative } from 'node:path';
import { root } from './root.mjs';

/** All files under a path, in order; folders named in `without` are left out. */
export function filesUnder(path, without = []) {
  if (!existsSync(path)) return [];
  if (statSync(path).isFile()) return [path];
  return readdirSync(path, { withFileTypes: true })
    .filter((entry) => !without.includes(entry.name))
    .sort((a, b) => (a.name < b.name ? -1 : 1))
    .flatMap((entry) => filesUnder(join(path, entry.name), without));
}

/**
 * One text that changes when any of the files does.
 *
 * @param {string[]} paths files and folders, from the root
 * @param {string[]} [without] names of folders to leave out
 */
export function fingerprint(paths, without = []) {
  const hash = createHash('sha256').update(process.version);
  for (const file of paths.flatMap((path) => filesUnder(join(root, path), without))) {
    hash.update(`\0${relative(root, file)}\0`).update(readFileSync(file));
  }
  return hash.digest('hex');
}
