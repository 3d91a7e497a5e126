import type { PlanInput } from '../../shared/schedule/model.js';
import { slot } from '../../shared/schedule/slot.js';
import type { Project } from './project.js';

/** A published instance as the product plans it: one job, a pool a resource, a slot a period, open around the clock. */
export function planInputOf({ durations, successors, demands, capacities }: Project): PlanInput {
  const id = (i: number): string => String(i).padStart(5, '0');
  return {
    horizon: durations.reduce((sum, duration) => sum + duration, 0) + 1,
    now: slot(0),
    freezeUntil: slot(0),
    calendars: [],
    crews: [],
    weather: [],
    inspections: [],
    pools: capacities.map((quantity, r) => ({ id: id(r), quantity })),
    jobs: [{ id: 'project', priority: 0 }],
    phases: durations.map((slots, i) => ({
      id: id(i),
      jobId: 'project',
      duration: { kind: 'work', slots, mode: 'continuous' } as const,
      holds: demands[i]!.flatMap((quantity, r) =>
        quantity > 0 && slots > 0 ? [{ poolId: id(r), quantity }] : [],
      ),
    })),
    links: successors.flatMap((after, i) =>
      after.map((j) => ({
        id: `${id(i)} ${id(j)}`,
        from: id(i),
        to: id(j),
        kind: 'FS' as const,
        lag: 0,
        lagIn: 'elapsed' as const,
      })),
    ),
  };
}
