import { InstanceError, type Project } from './project.js';

/**
 * Reads a single-mode instance in the form of the published project scheduling library (Kolisch and Sprecher 1996): sections with a
 * heading, a line of column names, and a row an activity, numbered from 1.
 *
 * @throws InstanceError naming what is missing
 */
export function readSm(name: string, text: string): Project {
  const lines = text.split(/\r?\n/);
  const section = (heading: string, skip: number): number[][] => {
    const at = lines.findIndex((line) => line.startsWith(heading));
    if (at < 0) throw new InstanceError(name, `has no section "${heading}"`);
    const rows: number[][] = [];
    for (const line of lines.slice(at + skip)) {
      if (!/^\s*\d/.test(line)) break;
      rows.push(line.trim().split(/\s+/).map(Number));
    }
    return rows;
  };
  const precedence = section('PRECEDENCE RELATIONS', 2);
  const requests = section('REQUESTS/DURATIONS', 3);
  const capacities = section('RESOURCEAVAILABILITIES', 2)[0] ?? [];
  if (precedence.length === 0 || precedence.length !== requests.length) {
    throw new InstanceError(name, `lists ${precedence.length} activities and ${requests.length} durations`);
  }
  return {
    name,
    capacities,
    durations: requests.map((row) => row[2]!),
    demands: requests.map((row) => row.slice(3)),
    successors: precedence.map((row) => row.slice(3).map((number) => number - 1)),
  };
}
