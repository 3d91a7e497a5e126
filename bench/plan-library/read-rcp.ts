import { InstanceError, type Project } from './project.js';

/**
 * Reads an instance in the free form that Patterson's set is published in: numbers apart by white space; activities and resources, the
 * capacities, then for each activity its duration, what it takes of each resource, how many successors it has, and which.
 *
 * @throws InstanceError when the numbers end early or are none
 */
export function readRcp(name: string, text: string): Project {
  const numbers = text.trim().split(/\s+/).map(Number);
  let at = 0;
  const next = (): number => {
    const value = numbers[at++];
    if (value === undefined || !Number.isInteger(value))
      throw new InstanceError(name, `number ${at} is missing`);
    return value;
  };
  const several = (count: number): number[] => Array.from({ length: count }, next);
  const activities = next();
  const resources = next();
  const capacities = several(resources);
  const rows = Array.from({ length: activities }, () => ({
    duration: next(),
    demand: several(resources),
    successors: several(next()).map((number) => number - 1),
  }));
  return {
    name,
    capacities,
    durations: rows.map(({ duration }) => duration),
    demands: rows.map(({ demand }) => demand),
    successors: rows.map(({ successors }) => successors),
  };
}
