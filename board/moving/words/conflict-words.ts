import type { Conflict } from '../../../shared/schedule/model.js';

/** What a preview comes up against, in words; null for what is told elsewhere (ends that change, promises that move). */
export function conflictWords(conflict: Conflict, nameOf: (phaseId: string) => string): string | null {
  switch (conflict.code) {
    case 'commitmentBroken':
    case 'dueMissed':
      return null;
    case 'pinBeforePredecessor':
      return `${nameOf(conflict.phaseId)} would start before the work it waits for is done.`;
    case 'pinBeforeGate':
      return `${nameOf(conflict.phaseId)} would start before a clearance, a visit or a cure that it waits for.`;
    case 'pinInClosedTime':
      return `${nameOf(conflict.phaseId)} would start in closed hours, or in weather that closes it.`;
    case 'pinMoved':
      return `${nameOf(conflict.phaseId)} cannot start then: its crew or its equipment is taken.`;
    case 'lagExceeded':
      return `${nameOf(conflict.phaseIds.at(-1) ?? '')} would come too late after ${nameOf(conflict.phaseIds[0] ?? '')}.`;
    case 'inspectionLapsed':
    case 'clearanceLapsed':
      return `${nameOf(conflict.phaseId)} would start after what it waits for has lapsed.`;
    case 'visitBeforeReady':
      return 'A booked visit would come before its work is done.';
    case 'gateUndated':
      return null;
    default:
      return 'phaseId' in conflict
        ? `${nameOf(conflict.phaseId)} would have no place.`
        : 'Work would stand against each other; the conflicts of the plan would say which.';
  }
}
