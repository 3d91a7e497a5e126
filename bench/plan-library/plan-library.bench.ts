import { readFileSync } from 'node:fs';
import { performance } from 'node:perf_hooks';
import { improve } from '../../shared/schedule/improve/improve.js';
import { compileNetwork } from '../../shared/schedule/improve/network.js';
import { verify } from '../../shared/schedule/verify/verify.js';
import { bench } from '../runner/bench.js';
import { amount, count, optionalPath, path } from '../runner/option.js';
import { rounded } from '../runner/timing.js';
import { countViolations } from './check-schedule.js';
import { planInputOf } from './plan-input-of.js';
import type { Project } from './project.js';
import { bestOf, readBest, readLibrary } from './read-library.js';

interface Run {
  readonly makespan: number;
  readonly bound: number;
  readonly passes: number;
  readonly violations: number;
}

/** The product's improver on published single-project instances, against their best known makespans and the critical-path bound. */
export const planLibrary = bench({
  name: 'plan-library',
  says: "the improver on published single-project instances (.sm, .rcp), over the best known and over the critical path's bound",
  options: {
    instances: path('folder with the instances'),
    best: optionalPath('list of best or optimal makespans'),
    schedules: count('generation passes for each instance, every one counted', 1),
    seconds: amount('time for each instance at most', 3600),
    seeds: count('seeds, each over all instances', 1, 3),
    every: count('looks at every so-manieth instance only', 1, 1),
  },
  run({ instances, best, schedules, seconds, seeds, every }, progress) {
    const projects = readLibrary(instances).filter((_, i) => i % every === 0);
    const known = best === null ? undefined : readBest(readFileSync(best, 'latin1'));
    const began = performance.now();
    let overBound = 0;
    let overBest = 0;
    let violations = 0;
    let passes = 0;
    for (let seed = 1; seed <= seeds; seed++) {
      for (const project of projects) {
        const run = runOne(project, seed, schedules, seconds);
        overBound += (run.makespan - run.bound) / run.bound;
        const reference = known && bestOf(known, project.name);
        if (known && reference === undefined) throw new RangeError(`${best} does not list ${project.name}.`);
        if (reference !== undefined) overBest += (run.makespan - reference) / reference;
        violations += run.violations;
        passes += run.passes;
      }
      progress(`seed ${seed} of ${seeds} done`);
    }
    const runs = projects.length * seeds;
    const figures = {
      instances: projects.length,
      schedules,
      overBestPercent: known ? rounded((100 * overBest) / runs, 3) : null,
      overBoundPercent: rounded((100 * overBound) / runs, 3),
      seconds: rounded((performance.now() - began) / 1000, 1),
      violations,
      seeds,
      passes,
    };
    return {
      figures,
      text: [
        `${figures.instances} instances, ${seeds} seeds, at most ${schedules} schedules each (${passes} in all, ${violations} violations)`,
        `over the best known: ${figures.overBestPercent ?? '–'} %`,
        `over the critical-path bound: ${figures.overBoundPercent} %`,
        `${figures.seconds} s`,
      ].join('\n'),
      ok: violations === 0,
    };
  },
});

function runOne(project: Project, seed: number, schedules: number, seconds: number): Run {
  const input = planInputOf(project);
  const until = performance.now() + 1000 * seconds;
  let violations = 0;
  let seen = 0;
  const { plan, schedules: passes } = improve(input, {
    seed,
    schedules,
    stop: () => performance.now() > until,
    inspect: (starts, direction) => {
      seen++;
      violations += countViolations(project, starts, direction === 1);
    },
  });
  if (seen !== passes || passes > schedules)
    throw new Error(`${project.name}: ${passes} passes counted, ${seen} seen.`);
  violations += verify(input, plan).length;
  return { makespan: plan.jobs[0]!.finish!, bound: compileNetwork(project).critical, passes, violations };
}
