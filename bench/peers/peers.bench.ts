import { readFileSync } from 'node:fs';
import { performance } from 'node:perf_hooks';
import { improve } from '../../shared/schedule/improve/improve.js';
import { verify } from '../../shared/schedule/verify/verify.js';
import { planInputOf } from '../plan-library/plan-input-of.js';
import type { Project } from '../plan-library/project.js';
import { bestOf, readBest, readLibrary } from '../plan-library/read-library.js';
import { bench } from '../runner/bench.js';
import { amount, optionalPath, path } from '../runner/option.js';
import { rounded } from '../runner/timing.js';
import { solveByConstraints } from './constraint-solver.js';

interface Row {
  readonly instance: string;
  readonly best: number | null;
  readonly ours: number;
  readonly solver: number | null;
  readonly solverProved: boolean;
  readonly oursOverBestPercent: number | null;
  readonly solverOverBestPercent: number | null;
  readonly solverSeconds: number;
}

/** The improver and a general constraint solver side by side on published instances. */
export const peers = bench({
  name: 'peers',
  says: 'the improver for a second beside a general constraint solver for a minute, on ten small and five large published instances',
  options: {
    small: path('folder with the small instances (30 activities)'),
    large: path('folder with the large ones (120 activities)'),
    'best-small': optionalPath('list of best makespans of the small ones'),
    'best-large': optionalPath('list of best makespans of the large ones'),
    seconds: amount('time for the solver, each', 60),
    'our-seconds': amount('time for the improver, each', 1),
  },
  async run(given, progress) {
    const rows: Row[] = [];
    for (const [folder, list, count] of [
      [given.small, given['best-small'], 10],
      [given.large, given['best-large'], 5],
    ] as const) {
      const known = list === null ? new Map<string, number>() : readBest(readFileSync(list, 'latin1'));
      for (const project of spread(readLibrary(folder), count)) {
        const row = await compare(
          project,
          bestOf(known, project.name) ?? null,
          given['our-seconds'],
          given.seconds,
        );
        progress(lineOf(row));
        rows.push(row);
      }
    }
    return {
      figures: { solverSeconds: given.seconds, ourSeconds: given['our-seconds'], rows },
      text: ['instance      best   ours  solver', ...rows.map(lineOf)].join('\n'),
      ok: true,
    };
  },
});

/** So many of a list, as far apart as they can be. */
function spread<T>(list: readonly T[], count: number): T[] {
  const step = Math.max(1, list.length / count);
  return Array.from({ length: Math.min(count, list.length) }, (_, k) => list[Math.floor((k + 0.5) * step)]!);
}

async function compare(
  project: Project,
  best: number | null,
  ourSeconds: number,
  seconds: number,
): Promise<Row> {
  const input = planInputOf(project);
  const until = performance.now() + 1000 * ourSeconds;
  const { plan } = improve(input, { seed: 1, stop: () => performance.now() > until });
  if (verify(input, plan).length > 0) throw new Error(`${project.name}: the plan breaks its own rules.`);
  const ours = plan.jobs[0]!.finish!;
  const solved = await solveByConstraints(project, seconds);
  const over = (value: number | null): number | null =>
    value === null || best === null ? null : rounded((100 * (value - best)) / best, 2);
  return {
    instance: project.name,
    best,
    ours,
    solver: solved.makespan,
    solverProved: solved.proved,
    oursOverBestPercent: over(ours),
    solverOverBestPercent: over(solved.makespan),
    solverSeconds: rounded(solved.seconds, 1),
  };
}

function lineOf(row: Row): string {
  const cell = (value: number | null, width: number): string => String(value ?? '–').padStart(width);
  const gap = (value: number | null): string => (value === null ? '' : ` (${value} % over the best)`);
  const proof = row.solverProved ? ', proved' : '';
  return (
    `${row.instance.padEnd(12)}${cell(row.best, 6)}${cell(row.ours, 7)}${gap(row.oursOverBestPercent)}` +
    `${cell(row.solver, 8)}${gap(row.solverOverBestPercent)} in ${row.solverSeconds} s${proof}`
  );
}
