import { renameSync, writeFileSync } from 'node:fs';

/** Moves a clock that is kept in a file; whoever reads it meanwhile sees the old moment or the new one, never half. */
export function writeClock(path: string, at: Date): void {
  writeFileSync(`${path}.next`, at.toISOString());
  renameSync(`${path}.next`, path);
}
