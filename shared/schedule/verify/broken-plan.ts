import type { Plan, PlanInput, PlannedInspection, PlannedPhase } from '../model.js';
import { verify } from './verify.js';

/** A plan in which one phase is written otherwise by hand. Made for specs. */
export function withPhase(plan: Plan, id: string, change: Partial<PlannedPhase>): Plan {
  const phases = plan.phases.map((phase) => (phase.id === id ? { ...phase, ...change } : phase));
  return { ...plan, phases };
}

/** A plan in which its visits are. */
export function withVisits(plan: Plan, change: Partial<PlannedInspection>): Plan {
  return { ...plan, inspections: plan.inspections.map((visit) => ({ ...visit, ...change })) };
}

/** A plan that keeps quiet about everything. */
export function silent(plan: Plan): Plan {
  return { ...plan, conflicts: [] };
}

/** What is found wrong, as `rule subject: text`. */
export function faults(input: PlanInput, plan: Plan): string[] {
  return verify(input, plan).map(({ rule, subject, text }) => `${rule} ${subject}: ${text}`);
}
