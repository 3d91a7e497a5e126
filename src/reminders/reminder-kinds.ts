import { cureReleasePredicted } from './kinds/cure-release-predicted.js';
import { equipmentDueTomorrow } from './kinds/equipment-due-tomorrow.js';
import { holdPointPending } from './kinds/hold-point-pending.js';
import { inspectionToRequest } from './kinds/inspection-to-request.js';
import { markOutLapsing } from './kinds/mark-out-lapsing.js';
import { proposalWaiting } from './kinds/proposal-waiting.js';
import { readingDue } from './kinds/reading-due.js';
import { visitToday } from './kinds/visit-today.js';
import { REMINDER_KINDS, type ReminderKind } from './reminder-kind.js';

/** The derivations of all kinds; a new kind is a new file and a row here. */
export const reminderKinds: readonly ReminderKind[] = [
  inspectionToRequest,
  visitToday,
  holdPointPending,
  markOutLapsing,
  equipmentDueTomorrow,
  cureReleasePredicted,
  readingDue,
  proposalWaiting,
];

/** @throws Error naming every kind of reminder without exactly one derivation. */
export function demandOneDerivationEach(derivations: readonly ReminderKind[]): void {
  const faults = REMINDER_KINDS.map(
    (kind) => [kind, derivations.filter((one) => one.kind === kind).length] as const,
  )
    .filter(([, count]) => count !== 1)
    .map(([kind, count]) => `the reminder kind "${kind}" has ${count} derivations instead of one`);
  if (faults.length > 0) throw new Error(`Reminders cannot be derived: ${faults.join('; ')}`);
}
