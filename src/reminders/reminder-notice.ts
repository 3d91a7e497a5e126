import type { Notice, Reminder } from '../generated/prisma/client.js';
import type { Transaction } from '../platform/database/database.js';
import { foremenOf, type NoticeKind, peopleOf } from '../notices/notices.face.js';
import { gatherFacts } from './gather.js';
import type { Audience, ReminderDetail, ReminderKind } from './reminder-kind.js';

/** The notice that a reminder becomes when it fires. Its words stand in the reminder, which every change keeps up to date. */
export function reminderNotice({ kind, urgent, audience, derive }: ReminderKind): NoticeKind {
  return {
    kind,
    urgent,
    overtaken: async (tx, { notice }) => {
      const facts = await gatherFacts(tx, notice.companyId);
      const wanted = derive(facts).find(({ subjectId }) => subjectId === notice.subjectId);
      if (!wanted) return 'not sent: no longer needed';
      return (await hasMoved(tx, notice)) ? 'not sent: it was moved to later' : null;
    },
    announce: async (tx, { companyId, ids }) => {
      const reminder =
        typeof ids['reminderId'] === 'string'
          ? await tx.reminder.findFirst({ where: { id: ids['reminderId'], companyId } })
          : null;
      if (!reminder) return null;
      const { crewId, message } = reminder.detail as unknown as ReminderDetail;
      return {
        sourceKey: sourceKeyOf(reminder),
        jobId: reminder.jobId,
        subjectType: reminder.subjectType,
        subjectId: reminder.subjectId,
        recipientIds: await recipientsOf(tx, companyId, audience, crewId),
        usefulUntil: reminder.usefulUntil,
        message,
      };
    },
  };
}

/** Whether the reminder behind a notice was made due anew after it had fired. */
async function hasMoved(
  tx: Transaction,
  { companyId, kind, subjectId, sourceKey }: Notice,
): Promise<boolean> {
  const reminder = await tx.reminder.findFirst({ where: { companyId, kind, subjectId } });
  return reminder !== null && sourceKey !== sourceKeyOf(reminder);
}

const sourceKeyOf = ({ id, generation }: Pick<Reminder, 'id' | 'generation'>): string =>
  `reminder-${id}-${generation}`;

async function recipientsOf(
  tx: Transaction,
  companyId: string,
  audience: Audience,
  crewId: string | null,
): Promise<string[]> {
  const office = audience === 'foremen' ? [] : await peopleOf(tx, companyId, 'office');
  const foremen = audience === 'office' ? [] : await foremenOf(tx, companyId, crewId);
  return [...office, ...foremen];
}
