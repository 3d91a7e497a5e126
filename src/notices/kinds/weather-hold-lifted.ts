import { z } from 'zod';
import type { Notice } from '../../generated/prisma/client.js';
import type { Transaction } from '../../platform/database/database.js';
import type { NoticeKind } from '../notice-kind.js';
import { holdsKey, holdsOf, idsIn } from './weather-hold-facts.js';
import { heldName, holdFacts, holdLink } from './weather-hold-message.js';

const named = z.object({ holdIds: z.array(z.uuid()), by: z.uuid().nullable() });

/** Tells those who were told of a hold that it is lifted before its end. */
export const weatherHoldLifted: NoticeKind = {
  kind: 'weather-hold-lifted',
  urgent: false,

  announce: async (tx, { companyId, now, ids }) => {
    const { holdIds, by } = named.parse(ids);
    const rows = await holdsOf(tx, companyId, holdIds);
    const holds = rows.filter(
      ({ liftedAt, endsAt }) => liftedAt !== null && (endsAt === null || endsAt > now),
    );
    const [first] = holds;
    if (!first) return null;
    const told = await toldOf(
      tx,
      companyId,
      holds.map(({ id }) => id),
    );
    const people = told.flatMap(({ deliveries }) => deliveries.map(({ recipientId }) => recipientId));
    if (people.length === 0) return null;
    const ends = holds.flatMap(({ endsAt }) => endsAt ?? []);
    return {
      sourceKey: holdsKey('weather-hold-lifted', {
        holds: holds.map(({ id, tellings: telling }) => ({ id, telling })),
      }),
      jobId: first.phase?.jobId ?? null,
      subjectType: first.phase ? 'phase' : 'site',
      subjectId: first.phaseId ?? first.siteId,
      recipientIds: [...new Set(people)].filter((id) => id !== by),
      usefulUntil: ends.length === holds.length ? new Date(Math.max(...ends.map(Number))) : null,
      message: {
        subject: `Weather hold lifted: ${heldName(first)}`,
        opening: 'The weather no longer holds this work. Look at the plan for when it is to start now.',
        facts: holdFacts(holds, []),
        lists: [{ title: 'Why', items: [...new Set(holds.flatMap(({ liftReason }) => liftReason ?? []))] }],
        cautions: [],
        link: holdLink(first, 'See the plan'),
      },
    };
  },

  /** Only those hear it who were sent a notice of one of its holds. */
  overtaken: async (tx, { notice, delivery }) => {
    const told = await toldOf(tx, notice.companyId, idsIn(notice.sourceKey));
    const sent = told.some(({ deliveries }) =>
      deliveries.some(({ recipientId, state }) => recipientId === delivery.recipientId && state === 'sent'),
    );
    return sent ? null : 'not sent: the hold it lifts was never told';
  },
};

/** The notices in which people were told of any of the holds. */
async function toldOf(tx: Transaction, companyId: string, holdIds: readonly string[]) {
  const notices = await tx.notice.findMany({
    where: {
      companyId,
      kind: { in: ['weather-hold', 'weather-hold-soon'] },
      OR: holdIds.map((id) => ({ sourceKey: { contains: id } })),
    },
    include: { deliveries: true },
  });
  return notices.filter(({ sourceKey }: Notice) => idsIn(sourceKey).some((id) => holdIds.includes(id)));
}
