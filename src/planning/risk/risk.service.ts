import { Injectable } from '@nestjs/common';
import type { DateAt } from '../../../shared/schedule/risk/precision.js';
import type { Risk } from '../../../shared/schedule/risk/risk.js';
import { SLOT_MINUTES, type Slot } from '../../../shared/schedule/slot.js';
import { fingerprint } from '../../platform/change/fingerprint.js';
import type { Context } from '../../platform/context.js';
import { type CompanyPlan, CompanyPlanner } from '../input/company-plan.js';
import { runThread } from '../threads/run-thread.js';
import { ASSUMPTIONS, riskModelOf } from './risk-model-of.js';
import type { LikelyDate, PlanRisk } from './risk.model.js';

const LEAST_SAMPLES = 20;
const MOST_SAMPLES = 1000;
const MOST_KEPT = 50;

/** Says how sure the dates are. It computes beside the thread of requests, one company after the other, and keeps what it found while the plan stands. */
@Injectable()
export class RiskService {
  private readonly kept = new Map<string, Promise<PlanRisk>>();
  private turn: Promise<unknown> = Promise.resolve();

  constructor(private readonly planner: CompanyPlanner) {}

  /** The risk of the plan as it is now. Samples are bounded from 20 to 1000. */
  async ask(ctx: Context, samples: number, seed: number): Promise<PlanRisk> {
    const plan = await this.planner.plan(ctx);
    const count = Math.min(MOST_SAMPLES, Math.max(LEAST_SAMPLES, samples));
    const key = fingerprint([ctx.companyId, plan.planned, count, seed]);
    const known = this.kept.get(key);
    if (known) return known;
    const made = this.turn.then(() => compute(plan, count, seed));
    this.turn = made.catch(() => undefined);
    this.keep(key, made);
    return made;
  }

  private keep(key: string, made: Promise<PlanRisk>): void {
    const oldest = this.kept.keys().next();
    if (this.kept.size >= MOST_KEPT && !oldest.done) this.kept.delete(oldest.value);
    this.kept.set(key, made);
    made.catch(() => this.kept.delete(key));
  }
}

async function compute(plan: CompanyPlan, samples: number, seed: number): Promise<PlanRisk> {
  const { planned: input, rows, frame } = plan;
  const model = riskModelOf(plan);
  const found: Risk = await runThread<'risk'>({ kind: 'risk', input, model, seed, samples }).result;
  const dateOf = (slot: Slot | null): Date | null => (slot === null ? null : new Date(frame.ms(slot)));
  const likely = ({ share, at, low, high }: DateAt): LikelyDate => ({
    share,
    at: dateOf(at),
    low: dateOf(low),
    high: dateOf(high),
  });
  return {
    planNumber: rows.company.planNumber,
    samples: found.samples,
    seed,
    assumptions: ASSUMPTIONS,
    jobs: found.jobs.map(({ jobId, planned, fan, half, fourFifths, dueKept, causes }) => ({
      jobId,
      planned: dateOf(planned),
      fan: fan.map(likely),
      half: likely(half),
      fourFifths: likely(fourFifths),
      dueKept,
      causes: causes.map(({ source, slots, share }) => ({
        source,
        hours: (slots * SLOT_MINUTES) / 60,
        share,
      })),
    })),
    phases: found.phases.map(({ phaseId, critical, commitmentKept }) => ({
      phaseId,
      critical,
      promiseKept: commitmentKept,
    })),
  };
}
