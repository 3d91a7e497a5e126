import type { PlainProject } from '../../shared/schedule/improve/network.js';

/**
 * Checks one schedule by plain counting, sharing nothing with what made it.
 *
 * @param starts of every activity, counted from the beginning, or from the end when `mirrored`
 * @returns how many links and how many periods of a resource are broken
 */
export function countViolations(project: PlainProject, starts: Int32Array, mirrored: boolean): number {
  const { durations, successors, demands, capacities } = project;
  let end = 0;
  let violations = 0;
  for (let i = 0; i < starts.length; i++) {
    if (starts[i]! < 0) return 1;
    end = Math.max(end, starts[i]! + durations[i]!);
  }
  for (let i = 0; i < starts.length; i++) {
    for (const j of successors[i]!) {
      const [first, second] = mirrored ? [j, i] : [i, j];
      if (starts[second]! < starts[first]! + durations[first]!) violations++;
    }
  }
  const change = new Int32Array(end + 1);
  for (let r = 0; r < capacities.length; r++) {
    change.fill(0);
    for (let i = 0; i < starts.length; i++) {
      const taken = demands[i]![r]!;
      if (taken === 0 || durations[i] === 0) continue;
      change[starts[i]!]! += taken;
      change[starts[i]! + durations[i]!]! -= taken;
    }
    let out = 0;
    for (let t = 0; t <= end; t++) {
      out += change[t]!;
      if (out > capacities[r]!) violations++;
    }
  }
  return violations;
}
