import type { Prisma } from '../generated/prisma/client.js';
import type { Change } from '../platform/change/change.js';
import type { ReminderFacts } from './facts.js';
import { gatherFacts } from './gather.js';
import { reconcile, type WantedReminder } from './reconcile.js';
import { reminderKinds } from './reminder-kinds.js';

/** All reminders that follow from the facts. */
export function wantedReminders(facts: ReminderFacts): WantedReminder[] {
  return reminderKinds.flatMap(({ kind, derive }) => derive(facts).map((wanted) => ({ ...wanted, kind })));
}

/** The step after every change: the stored reminders become those that follow from the rows as they now stand. */
export async function remindersStep({ tx, ctx: { companyId }, now }: Change): Promise<void> {
  const wanted = wantedReminders(await gatherFacts(tx, companyId));
  const stored = await tx.reminder.findMany({
    where: {
      companyId,
      OR: [{ state: 'pending' }, { subjectId: { in: wanted.map(({ subjectId }) => subjectId) } }],
    },
  });
  const { create, move, reword, cancel } = reconcile(stored, wanted, now);
  if (create.length > 0) {
    await tx.reminder.createMany({
      data: create.map((one) => ({
        companyId,
        kind: one.kind,
        subjectType: one.subjectType,
        subjectId: one.subjectId,
        ...changing(one),
      })),
    });
  }
  for (const { id, wanted: one } of move) {
    await tx.reminder.update({
      where: { id },
      data: { ...changing(one), state: 'pending', generation: { increment: 1 }, queuedAt: null },
    });
  }
  for (const { id, wanted: one } of reword) {
    await tx.reminder.update({ where: { id }, data: changing(one) });
  }
  if (cancel.length > 0) {
    await tx.reminder.updateMany({ where: { id: { in: [...cancel] } }, data: { state: 'cancelled' } });
  }
}

/** The columns that follow from the rows. */
function changing({ jobId, dueAt, usefulUntil, detail }: WantedReminder) {
  return { jobId, dueAt, usefulUntil, detail: detail as unknown as Prisma.InputJsonObject };
}
