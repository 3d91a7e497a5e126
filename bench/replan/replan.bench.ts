import { applyChanges, type Change } from '../../shared/schedule/change.js';
import type { Plan, PlanInput } from '../../shared/schedule/model.js';
import { Pass } from '../../shared/schedule/pass.js';
import { plan } from '../../shared/schedule/plan.js';
import { Planner } from '../../shared/schedule/planner.js';
import { verify } from '../../shared/schedule/verify/verify.js';
import { portfolio } from '../portfolio/portfolio.js';
import { seeded } from '../portfolio/seeded.js';
import { bench } from '../runner/bench.js';
import { count } from '../runner/option.js';
import { medianOf, once, rounded } from '../runner/timing.js';
import { slotBySlot } from './slot-by-slot/slot-by-slot.js';

/** Passes before the clock counts, and passes that count. */
const WARM_UP = 30;
const PASSES = 60;
/** Changes tried one at a time, each from the plan as it stands. */
const CHANGES = 200;
/** So many of them are planned slot by slot as well. */
const JUDGED = 1;

/**
 * One pass over a portfolio whose jobs come in over the season, in the order of the plan before: whole, and after a change of one phase
 * (two hours longer, or its start drawn a day later), beside a plain scheduler that tries slot after slot.
 */
export const replan = bench({
  name: 'replan',
  says: 'a planning pass over an invented portfolio of jobs with sixteen phases each, whole and after a change, beside one slot by slot',
  options: { jobs: count('jobs in the portfolio', 2, 200) },
  run({ jobs }) {
    const input = standing(portfolio(jobs, { staggered: true }));
    const fullColdMs = once(() => plan(input));
    const pass = new Pass(input);
    for (let i = 0; i < WARM_UP; i++) pass.whole();
    const fullMs = medianOf(Array.from({ length: PASSES }, () => once(() => pass.whole())));
    const all = Planner.of(standing(portfolio(jobs)));
    const rushed = changes(all.input, 2 * WARM_UP).map((change) => timed(all, change));

    const planner = Planner.of(input);
    const tried = changes(input, CHANGES);
    const incrementalColdMs = once(() => planner.preview([tried[0]!]));
    for (const change of tried.slice(0, WARM_UP)) timed(planner, change);
    const incrementalMs = medianOf(tried.map((change) => timed(planner, change)));

    const plain: number[] = [];
    const judge = (given: PlanInput, made: Plan): boolean => {
      let rows: ReturnType<typeof slotBySlot> = [];
      plain.push(once(() => (rows = slotBySlot(given))));
      return JSON.stringify(rows) === JSON.stringify(datesOf(made));
    };
    const samePlan =
      judge(input, pass.plan) &&
      tried
        .slice(0, JUDGED)
        .every((change) => judge(applyChanges(input, [change]), planner.preview([change]))) &&
      tried.every((change) => same(planner.preview([change]), plan(applyChanges(input, [change]))));
    const plainMs = medianOf(plain);
    const figures = {
      jobs,
      phases: input.phases.length,
      fullMs: rounded(fullMs),
      incrementalMs: rounded(incrementalMs),
      ratio: rounded(plainMs / fullMs),
      samePlan,
      fullColdMs: rounded(fullColdMs),
      incrementalColdMs: rounded(incrementalColdMs),
      allAtOnceMs: rounded(medianOf(rushed)),
      plainMs: rounded(plainMs),
      violations: verify(input, pass.plan).length,
    };
    return {
      figures,
      text: [
        `${figures.phases} phases, whole: ${figures.fullMs} ms warm, ${figures.fullColdMs} ms cold with everything compiled`,
        `after a change: ${figures.incrementalMs} ms warm, ${figures.incrementalColdMs} ms the first time; ${figures.allAtOnceMs} ms where all jobs wait for the same crews at once`,
        `slot by slot: ${figures.plainMs} ms, ${figures.ratio} times the whole pass; the plans are ${samePlan ? 'the same' : 'NOT the same'}`,
      ].join('\n'),
      ok: samePlan && figures.violations === 0,
    };
  },
});

/** The input with its own plan as the plan before, whose order the next one keeps. */
function standing(input: PlanInput): PlanInput {
  const places = new Map(plan(input).phases.map((phase) => [phase.id, phase]));
  const phases = input.phases.map((phase) => {
    const { start, crewId } = places.get(phase.id)!;
    return start === null ? phase : { ...phase, previous: { start, ...(crewId === null ? {} : { crewId }) } };
  });
  return { ...input, phases };
}

/** Changes of one phase each, drawn from all of them. */
function changes(input: PlanInput, length: number): Change[] {
  const pick = seeded(4_711);
  return Array.from({ length }, (_, i): Change => {
    const phase = input.phases[pick(input.phases.length)]!;
    if (i % 2 === 0) return { kind: 'delay', phaseId: phase.id, slots: 8 };
    const at = (phase.previous!.start + 96) as typeof input.now;
    return {
      kind: 'phase',
      phase: {
        ...phase,
        gates: [...(phase.gates ?? []), { kind: 'notBefore', id: 'drawn', at, cause: 'tried' }],
      },
    };
  });
}

/** How long the preview of a change takes from the plan as it stands. */
function timed(planner: Planner, change: Change): number {
  planner.preview([]);
  return once(() => planner.preview([change]));
}

function datesOf({ phases }: Plan): ReturnType<typeof slotBySlot> {
  return phases.map(({ id, start, finish, crewId }) => ({ id, start, finish, crewId }));
}

function same(a: Plan, b: Plan): boolean {
  return JSON.stringify(a) === JSON.stringify(b);
}
