import type { PlanInput } from '../../../shared/schedule/model.js';

/**
 * Says what slot by slot does not plan: it serves to be compared with, on portfolios of work that has not begun.
 *
 * @throws RangeError naming what the input has and it does not know
 */
export function refuseUnknown(input: PlanInput): void {
  const found = [
    ...input.inspections.map(({ id }) => `inspection "${id}"`),
    ...input.phases.filter(({ facts }) => facts !== undefined).map(({ id }) => `facts of phase "${id}"`),
    ...input.phases
      .filter(({ commitment }) => commitment !== undefined)
      .map(({ id }) => `commitment of phase "${id}"`),
    ...input.phases.filter(({ keepsCrew }) => keepsCrew === false).map(({ id }) => `free crew of "${id}"`),
    ...input.links.filter(({ mostLag }) => mostLag !== undefined).map(({ id }) => `greatest lag of "${id}"`),
  ];
  if (found.length > 0) {
    throw new RangeError(`Slot by slot does not plan ${found.join(', ')}: leave it out of the comparison.`);
  }
}
