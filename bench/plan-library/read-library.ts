import { readdirSync, readFileSync } from 'node:fs';
import { basename, extname, join } from 'node:path';
import { InstanceError, type Project } from './project.js';
import { readRcp } from './read-rcp.js';
import { readSm } from './read-sm.js';

const READERS: Readonly<Record<string, (name: string, text: string) => Project>> = {
  '.sm': readSm,
  '.rcp': readRcp,
};

/**
 * Reads every `.sm` and `.rcp` file of a folder, by name.
 * @throws InstanceError when there is none or one cannot be read
 */
export function readLibrary(folder: string): Project[] {
  const files = readdirSync(folder).filter((file) => READERS[extname(file).toLowerCase()]);
  if (files.length === 0) throw new InstanceError(folder, 'holds no .sm or .rcp file');
  return files.sort().map((file) => {
    const ending = extname(file);
    return READERS[ending.toLowerCase()]!(basename(file, ending), readFileSync(join(folder, file), 'latin1'));
  });
}

/**
 * Reads a published list of best or optimal makespans: rows that begin with parameter, instance and makespan. The key is
 * `parameter_instance`, as the instances' file names end.
 */
export function readBest(text: string): Map<string, number> {
  const rows = text.split(/\r?\n/).flatMap((line) => {
    const row = /^\s*(\d+)\s+(\d+)\s+(\d+)(?:\s|$)/.exec(line);
    return row ? [[`${row[1]}_${row[2]}`, Number(row[3])] as const] : [];
  });
  return new Map(rows);
}

/** The best value of an instance by its name, e.g. `j301_1`; undefined when the list does not have it. */
export function bestOf(best: ReadonlyMap<string, number>, name: string): number | undefined {
  const key = /^[a-z]*(?:30|60|90|120)(\d+_\d+)$/i.exec(name)?.[1];
  return key === undefined ? undefined : best.get(key);
}
