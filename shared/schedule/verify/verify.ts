import type { Plan, PlanInput } from '../model.js';
import { Book } from './book.js';
import { checkCrews } from './check-crews.js';
import { checkDates } from './check-dates.js';
import { checkFacts } from './check-facts.js';
import { checkGates } from './check-gates.js';
import { checkHours } from './check-hours.js';
import { checkLinks } from './check-links.js';
import { checkStock } from './check-stock.js';
import { checkVisits } from './check-visits.js';
import type { Violation } from './violation.js';

const CHECKS = [
  checkFacts,
  checkLinks,
  checkHours,
  checkCrews,
  checkStock,
  checkGates,
  checkVisits,
  checkDates,
] as const;

/**
 * Checks a plan against its input with plain counting of its own, sharing no code with the engine. A broken promise is no violation where
 * the plan has a conflict that owns up to it.
 *
 * @returns everything found; empty for a sound plan
 */
export function verify(input: PlanInput, plan: Plan): Violation[] {
  const book = new Book(input, plan);
  return CHECKS.flatMap((check) => check(book));
}
