import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { root } from '../house/root.mjs';
import { trackedFiles } from './tracked-files.mjs';

/*
 * What no file of the project may hold: the path of somebody's machine, or the address of a package registry, which
 * would tie the lock file to one place. The patterns are put together from parts, so that this file does not hold them.
 */

const PATTERNS = [
  {
    what: 'a path of one machine',
    pattern: new RegExp(`(?<![\\w.])/(${['work', 'root', 'Users'].join('|')})/[\\w.-]`),
  },
  { what: 'a path of one machine', pattern: new RegExp(`(?<![\\w.])/${'home'}/[a-z][\\w-]*/`) },
  {
    what: 'the address of a package registry',
    pattern: new RegExp(
      `https?://[\\w.-]*(${['registry', 'npm', 'artifact'].join('|')})[\\w-]*\\.[\\w.-]+`,
      'i',
    ),
  },
  { what: 'an address inside a lock file', pattern: new RegExp(`"${'resolved'}":`) },
];

const isText = (buffer) => !buffer.subarray(0, 8000).includes(0);

/** @returns {{ok: boolean, output: string}} */
export function words() {
  const faults = trackedFiles().flatMap((path) => {
    const buffer = readFileSync(join(root, path));
    if (!isText(buffer)) return [];
    return buffer
      .toString('utf8')
      .split('\n')
      .flatMap((line, index) =>
        PATTERNS.filter(({ pattern }) => pattern.test(line)).map(
          ({ what }) => `${path}:${index + 1} holds ${what}: ${line.trim().slice(0, 100)}`,
        ),
      );
  });
  return { ok: faults.length === 0, output: faults.join('\n') || 'no machine paths, no registry addresses' };
}
