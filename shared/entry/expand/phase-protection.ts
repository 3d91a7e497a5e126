import type { DraftEquipmentHold } from '../template/draft.js';

/** Kinds of equipment that stand over a phase from its start: what lifts weather limits while it runs. */
export function phaseProtection(
  holds: readonly Pick<DraftEquipmentHold, 'pool' | 'from'>[],
  phaseKey: string,
): string[] {
  return [...new Set(holds.filter((hold) => hold.from === phaseKey).map((hold) => hold.pool))].sort();
}
