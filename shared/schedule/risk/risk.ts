import { compareIds } from '../by-id.js';
import type { Plan, PlanInput, Reason } from '../model.js';
import { plan } from '../plan.js';
import type { Slot, SlotCount } from '../slot.js';
import { Draws } from './draws.js';
import { chanceOf, dateAt, type Chance, type DateAt } from './precision.js';
import { checkModel, type RiskModel, type Sources } from './risk-model.js';
import { distributionsOf, sampleInput } from './sample-input.js';

/** What bounds the samples and who is told of them. */
export interface RiskOptions {
  /** Equal seeds give equal samples. */
  readonly seed: number;
  readonly samples: number;
  /** Asked before each sample; true ends with the samples so far. */
  readonly stop?: (() => boolean) | undefined;
  readonly onProgress?: ((samples: number) => void) | undefined;
}

/** Waits of a job's phases, summed by what they wait for. */
export interface Waits {
  readonly kind: Reason['kind'];
  /** Slots of the clock, the mean over the samples. */
  readonly slots: number;
}

/** What makes a job late. */
export interface Cause {
  readonly source: keyof Sources;
  /** Slots by which the mean finish would be earlier without it, all other chance being the same. */
  readonly slots: number;
  /** Its share of all sources that delay; 0 when none does. */
  readonly share: number;
}

/** Chances of one job. */
export interface JobRisk {
  readonly jobId: string;
  /** Finish as planned. */
  readonly planned: Slot | null;
  /** Finish at 10, 20 … 90 %, for drawing. */
  readonly fan: readonly DateAt[];
  readonly half: DateAt;
  readonly fourFifths: DateAt;
  /** That it finishes by its due date; null without one. */
  readonly dueKept: Chance | null;
  readonly causes: readonly Cause[];
  readonly waits: readonly Waits[];
}

/** Chances of one phase. */
export interface PhaseRisk {
  readonly phaseId: string;
  readonly jobId: string;
  readonly critical: Chance;
  /** That it starts no later than committed; null without a commitment. */
  readonly commitmentKept: Chance | null;
}

/** Chances of a plan. `samples` is how many they rest on; each figure comes with its own 95 % interval. */
export interface Risk {
  readonly samples: number;
  readonly jobs: readonly JobRisk[];
  readonly phases: readonly PhaseRisk[];
}

const ALL: Sources = { durations: true, weather: true };
const FAN = [0.1, 0.2, 0.3, 0.4, 0.5, 0.6, 0.7, 0.8, 0.9];

/**
 * Draws durations and weather again and again and plans each time with the order of today's plan (a fixed policy: nobody re-decides with
 * hindsight). For the causes each sample is planned again with one source of chance switched off and the same numbers otherwise.
 *
 * @throws RangeError for a model that means nothing or less than one sample
 */
export function risk(input: PlanInput, model: RiskModel, options: RiskOptions): Risk {
  checkModel(model);
  if (!(options.samples >= 1)) throw new RangeError('Risk needs at least one sample.');
  const today = plan(input);
  const policy = { ...input, order: orderOf(today) };
  const distributions = distributionsOf(model);
  const tally = new Tally(today, model.weather !== undefined);
  for (let sample = 0; sample < options.samples; sample++) {
    if (sample > 0 && options.stop?.()) break;
    const draws = new Draws(options.seed, sample);
    const planned = (sources: Sources): Plan =>
      plan(sampleInput(policy, model, distributions, sources, draws));
    tally.add(planned(ALL), {
      durations: planned({ ...ALL, durations: false }),
      weather: model.weather ? planned({ ...ALL, weather: false }) : undefined,
    });
    options.onProgress?.(sample + 1);
  }
  return tally.result(input);
}

function orderOf(today: Plan): string[] {
  return [...today.phases]
    .sort((a, b) => (a.start ?? Infinity) - (b.start ?? Infinity) || compareIds(a.id, b.id))
    .map(({ id }) => id);
}

interface Without {
  readonly durations: Plan;
  readonly weather: Plan | undefined;
}

/** Sums over the samples. */
class Tally {
  private samples = 0;
  private readonly finishes: (Slot | null)[][];
  private readonly gained: Record<keyof Sources, number>[];
  private readonly waits: Map<Reason['kind'], number>[];
  private readonly critical: number[];
  private readonly starts: (Slot | null)[][];

  constructor(
    private readonly today: Plan,
    private readonly weather: boolean,
  ) {
    this.finishes = today.jobs.map(() => []);
    this.gained = today.jobs.map(() => ({ durations: 0, weather: 0 }));
    this.waits = today.jobs.map(() => new Map<Reason['kind'], number>());
    this.critical = today.phases.map(() => 0);
    this.starts = today.phases.map(() => []);
  }

  add(made: Plan, without: Without): void {
    this.samples++;
    const places = new Map(made.jobs.map(({ id }, j) => [id, j]));
    made.jobs.forEach((job, j) => {
      const finish = job.complete ? job.finish : null;
      this.finishes[j]!.push(finish);
      for (const source of ['durations', 'weather'] as const) {
        const other = without[source]?.jobs[j]?.finish;
        if (finish !== null && other !== null && other !== undefined)
          this.gained[j]![source] += finish - other;
      }
    });
    made.phases.forEach((phase, i) => {
      if (phase.critical) this.critical[i]!++;
      this.starts[i]!.push(phase.start);
      const sums = this.waits[places.get(phase.jobId)!]!;
      for (const { from, to, reason } of phase.trail)
        sums.set(reason.kind, (sums.get(reason.kind) ?? 0) + to - from);
    });
  }

  result(input: PlanInput): Risk {
    const commitments = new Map(input.phases.map(({ id, commitment }) => [id, commitment]));
    return {
      samples: this.samples,
      jobs: this.today.jobs.map((job, j) => this.jobRisk(job, j)),
      phases: this.today.phases.map(({ id, jobId }, i) => {
        const promised = commitments.get(id)?.start;
        const kept = this.starts[i]!.filter(
          (start) => start !== null && promised !== undefined && start <= promised,
        );
        return {
          phaseId: id,
          jobId,
          critical: chanceOf(this.critical[i]!, this.samples),
          commitmentKept: promised === undefined ? null : chanceOf(kept.length, this.samples),
        };
      }),
    };
  }

  private jobRisk({ id, finish, due }: Plan['jobs'][number], j: number): JobRisk {
    const sorted = [...this.finishes[j]!].sort((a, b) => (a ?? Infinity) - (b ?? Infinity) || 0);
    const kept = sorted.filter((at) => at !== null && due !== null && at <= due).length;
    return {
      jobId: id,
      planned: finish,
      fan: FAN.map((share) => dateAt(sorted, share)),
      half: dateAt(sorted, 0.5),
      fourFifths: dateAt(sorted, 0.8),
      dueKept: due === null ? null : chanceOf(kept, this.samples),
      causes: this.causes(j),
      waits: [...this.waits[j]!]
        .map(([kind, slots]) => ({ kind, slots: slots / this.samples }))
        .sort((a, b) => b.slots - a.slots || compareIds(a.kind, b.kind)),
    };
  }

  private causes(j: number): Cause[] {
    const sources = this.weather ? (['durations', 'weather'] as const) : (['durations'] as const);
    const slots = sources.map((source): SlotCount => this.gained[j]![source] / this.samples);
    const all = slots.reduce((sum, one) => sum + Math.max(0, one), 0);
    return sources.map((source, k) => ({
      source,
      slots: slots[k]!,
      share: all === 0 ? 0 : Math.max(0, slots[k]!) / all,
    }));
  }
}
