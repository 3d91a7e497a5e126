import type { OwnerHeat } from './owner-facts.js';

/** What owners must mind of the heat, in the trade's caution. */
export const OWNER_HEAT_CAUTION =
  'Until you are told, leave its switch and its breaker off, also in snow and ice: heat before the bed has hardened ruins it, and only a licensed electrician switches it on for the first time.';

/** When the heat may be switched on, in a sentence; `say` gives a day in words. */
export function heatWords(heat: OwnerHeat, now: number, say: (moment: number) => string): string {
  const { sets, energised, allowedAt, plannedAt } = heat;
  if (sets === 0) return 'This entry has no heat in it.';
  if (energised === sets) return 'The heat has been switched on and tested; you may use it.';
  if (allowedAt !== null && allowedAt <= now)
    return 'Everything that the heat waited for is met. The electrician switches it on for the first time.';
  if (allowedAt !== null)
    return `The heat may be switched on from ${say(allowedAt)} on, when the bed has hardened for as long as the cable asks. The electrician does it.`;
  if (plannedAt !== null)
    return `The heat is planned to be switched on around ${say(plannedAt)}, after the hookup, the final inspection and the weeks that the bed must harden. That day is not sure yet.`;
  return 'It is not known yet when the heat may be switched on.';
}
