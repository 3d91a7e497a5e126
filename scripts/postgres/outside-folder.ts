import { createHash } from 'node:crypto';
import { realpathSync } from 'node:fs';
import { join } from 'node:path';

/** Base of what root must keep outside a project that the database's user cannot enter. */
export function outsideFolder(): string {
  return '/var/lib/flagway';
}

/** The same place for the same project folder, whenever it is asked. */
export function outsideFolderOf(projectFolder: string): string {
  const name = createHash('sha256').update(realpathSync(projectFolder)).digest('hex').slice(0, 12);
  return join(outsideFolder(), name);
}
