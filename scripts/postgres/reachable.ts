import { spawnSync } from 'node:child_process';
import { existsSync } from 'node:fs';
import { dirname } from 'node:path';
import type { Account } from './account.js';

/** Whether the account can enter a folder, or the nearest folder above it that exists. */
export function reachable(folder: string, account: Account): boolean {
  let nearest = folder;
  while (!existsSync(nearest)) nearest = dirname(nearest);
  if (account.ids === undefined) return true;
  const test = spawnSync('/bin/sh', ['-c', 'test -x "$1"', 'sh', nearest], {
    ...account.ids,
    cwd: '/',
  });
  return test.status === 0;
}
