import { beforeAll, describe, expect, test } from '@jest/globals';
import highsModule from 'highs';
import { improve } from '../../shared/schedule/improve/improve.js';
import { seededRandom } from '../../shared/schedule/improve/random.js';
import type { Phase, PlanInput } from '../../shared/schedule/model.js';
import { slot } from '../../shared/schedule/slot.js';

/**
 * Judge: HiGHS, a general mixed-integer solver, on the time-indexed formulation of Pritsker, Watters and Wolfe (1969). It proves the least
 * latest finish of projects without calendars; the improver has to reach it.
 */
// The package's types tell of a CommonJS default; what an ES module gets is that default itself.
const loadHighs = highsModule as unknown as typeof highsModule.default;
let highs: Awaited<ReturnType<typeof loadHighs>>;
beforeAll(async () => {
  highs = await loadHighs();
});

interface Case {
  readonly input: PlanInput;
  readonly durations: readonly number[];
  readonly links: readonly (readonly [number, number])[];
  readonly demands: readonly (readonly number[])[];
  readonly capacities: readonly number[];
}

function caseOf(seed: number, count: number): Case {
  const random = seededRandom(seed);
  const draw = (below: number): number => Math.floor(random() * below);
  const durations = Array.from({ length: count }, () => 1 + draw(4));
  const capacities = [2 + draw(3), 2 + draw(3)];
  const demands = durations.map(() => capacities.map((all) => draw(all + 1)));
  const links = durations.flatMap((_, i) =>
    durations.flatMap((_, j) => (j > i && draw(5) === 0 ? [[i, j] as const] : [])),
  );
  const phases = durations.map((slots, i): Phase => ({
    id: `p${i}`,
    jobId: 'job',
    duration: { kind: 'work', slots, mode: 'continuous' },
    holds: demands[i]!.flatMap((quantity, r) => (quantity > 0 ? [{ poolId: `r${r}`, quantity }] : [])),
  }));
  const input: PlanInput = {
    horizon: durations.reduce((sum, duration) => sum + duration, 0),
    now: slot(0),
    freezeUntil: slot(0),
    calendars: [],
    crews: [],
    pools: capacities.map((quantity, r) => ({ id: `r${r}`, quantity })),
    weather: [],
    inspections: [],
    jobs: [{ id: 'job', priority: 0 }],
    phases,
    links: links.map(([i, j]) => ({
      id: `${i}-${j}`,
      from: `p${i}`,
      to: `p${j}`,
      kind: 'FS',
      lag: 0,
      lagIn: 'elapsed',
    })),
  };
  return { input, durations, links, demands, capacities };
}

/** The model in the solver's text form: x_i_t is 1 when activity i starts at t. */
function modelOf({ durations, links, demands, capacities }: Case, horizon: number): string {
  const x = (i: number, t: number): string => `x_${i}_${t}`;
  const times = (i: number): number[] => Array.from({ length: horizon - durations[i]! + 1 }, (_, t) => t);
  const rows: string[] = [];
  durations.forEach((duration, i) => {
    rows.push(
      `${times(i)
        .map((t) => x(i, t))
        .join(' + ')} = 1`,
    );
    const finish = times(i).map((t) => `${t + duration} ${x(i, t)}`);
    rows.push(`${finish.join(' + ')} - C <= 0`);
  });
  for (const [i, j] of links) {
    // No earlier than the predecessor's finish, period by period (the disaggregated form, which is the tighter one).
    for (let t = 0; t <= horizon; t++) {
      const after = times(j).filter((s) => s <= t);
      const before = times(i).filter((s) => s + durations[i]! <= t);
      if (after.length > 0) {
        rows.push(
          [...after.map((s) => `+ ${x(j, s)}`), ...before.map((s) => `- ${x(i, s)}`)].join(' ') + ' <= 0',
        );
      }
    }
  }
  capacities.forEach((capacity, r) => {
    for (let t = 0; t < horizon; t++) {
      const out = durations.flatMap((duration, i) =>
        demands[i]![r]! === 0
          ? []
          : times(i)
              .filter((s) => s <= t && t < s + duration)
              .map((s) => `${demands[i]![r]} ${x(i, s)}`),
      );
      if (out.length > 0) rows.push(`${out.join(' + ')} <= ${capacity}`);
    }
  });
  const all = durations.flatMap((_, i) => times(i).map((t) => x(i, t)));
  return `Minimize\n obj: C\nSubject To\n${rows.map((row, k) => ` c${k}: ${row}`).join('\n')}\nBinary\n ${all.join('\n ')}\nEnd\n`;
}

describe('the least latest finish, proved by a mixed-integer solver', () => {
  test.each(Array.from({ length: 40 }, (_, k) => [k + 1, 5 + (k % 6)]))(
    'case %d of %d activities is reached by the improver',
    (seed, count) => {
      const made = caseOf(seed, count);
      const found = improve(made.input, { seed, schedules: 2000 });
      const finish = found.plan.jobs[0]!.finish!;
      // The improver's own finish is a valid horizon: the solver can only confirm it or find something shorter.
      const solved = highs.solve(modelOf(made, finish));
      expect(solved.Status).toBe('Optimal');
      expect(finish).toBe(Math.round(solved.ObjectiveValue));
      expect(found.bound).toBeLessThanOrEqual(finish);
    },
  );
});
