import { existsSync, mkdirSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { fingerprint } from './fingerprint.mjs';
import { root } from './root.mjs';

/**
 * Does the work when its sources changed since it was last done, or when its result is gone.
 *
 * @param {{name: string, from: string[], without?: string[], to: string}} what `to` is a file of the result
 */
export async function upToDate({ name, from, without = [], to }, work) {
  const marker = join(root, '.flagway', 'built', name);
  const wanted = fingerprint(from, without);
  const done = existsSync(marker) && readFileSync(marker, 'utf8') === wanted && existsSync(join(root, to));
  if (done) return;
  rmSync(marker, { force: true });
  await work();
  mkdirSync(join(root, '.flagway', 'built'), { recursive: true });
  writeFileSync(marker, wanted);
}
