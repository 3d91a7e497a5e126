import { spawnSync } from 'node:child_process';

/** The system user a database server runs as: ours, or `postgres` when we are root. */
export interface Account {
  /** Set only when it is another user than ours. */
  readonly ids: { readonly uid: number; readonly gid: number } | undefined;
}

const NAME = 'postgres';

function idOf(flag: '-u' | '-g'): number | undefined {
  const { status, stdout } = spawnSync('id', [flag, NAME], { encoding: 'utf8' });
  return status === 0 ? Number(stdout.trim()) : undefined;
}

/**
 * PostgreSQL refuses to run as root, so root starts it as the user `postgres`, who is made when there is none.
 *
 * @throws Error saying what to do when that user cannot be made.
 */
export function databaseAccount(): Account {
  if (process.getuid?.() !== 0) return { ids: undefined };
  if (idOf('-u') === undefined) {
    spawnSync('groupadd', ['--system', NAME]);
    spawnSync('useradd', ['--system', '--gid', NAME, '--no-create-home', '--shell', '/bin/false', NAME]);
  }
  const uid = idOf('-u');
  const gid = idOf('-g');
  if (uid === undefined || gid === undefined) {
    throw new Error(
      `PostgreSQL does not run as root and the user ${NAME} could not be made. ` +
        `Run "useradd --system ${NAME}" first, start as an ordinary user, or set DATABASE_URL to a server of your own.`,
    );
  }
  return { ids: { uid, gid } };
}
