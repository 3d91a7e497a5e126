import type { InspectionState } from '../generated/prisma/client.js';

/** The steps of an inspection. */
export type InspectionStep = 'request' | 'book' | 'pass' | 'fail';

/** From which states each step may be taken; a booked window may be booked again when the authority moves it. */
export const INSPECTION_STEPS: Record<
  InspectionStep,
  { from: readonly InspectionState[]; to: InspectionState }
> = {
  request: { from: ['needed'], to: 'requested' },
  book: { from: ['requested', 'booked'], to: 'booked' },
  pass: { from: ['booked'], to: 'passed' },
  fail: { from: ['booked'], to: 'failed' },
};

/** What to do from each state instead of a step that it does not allow. */
export const NEXT_STEP: Record<InspectionState, string> = {
  needed: 'It has not been asked for yet: request it first.',
  requested: 'It is asked for: book the window that the authority gave before recording anything else.',
  booked: 'It is booked: record its result after the visit.',
  passed: 'It has passed; nothing more is needed.',
  failed: 'It has failed: go on with the re-inspection.',
};
