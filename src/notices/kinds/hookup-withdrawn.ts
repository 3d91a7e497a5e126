import { hookupOf } from './hookup-facts.js';
import { hookupLink, jobName, placeFacts } from './hookup-message.js';
import type { NoticeKind } from '../notice-kind.js';
import { countIn, readyCountOf, readyKey, withdrawnKey } from './ready-count.js';

/** Tells whoever was told that a hookup is ready that a need is no longer met. Sent at once: somebody may be on the way. */
export const hookupWithdrawn: NoticeKind = {
  kind: 'hookup-withdrawn',
  urgent: true,

  announce: async (tx, { companyId, ids }) => {
    const hookup = await hookupOf(tx, companyId, ids['hookupId']);
    if (!hookup) return null;
    const readyCount = readyCountOf(ids);
    const ready = await tx.notice.findUnique({
      where: { companyId_sourceKey: { companyId, sourceKey: readyKey(hookup.id, readyCount) } },
      include: { deliveries: { orderBy: { id: 'asc' } } },
    });
    if (!ready) return null;
    return {
      sourceKey: withdrawnKey(hookup.id, readyCount),
      jobId: hookup.jobId,
      subjectType: 'hookup',
      subjectId: hookup.id,
      recipientIds: [...new Set(ready.deliveries.map(({ recipientId }) => recipientId))],
      usefulUntil: null,
      message: {
        subject: `Not ready for hookup any more: ${jobName(hookup)}`,
        opening:
          'A need of this hookup is no longer met, so the earlier notice is withdrawn. Do not connect. You will hear again when every need is met.',
        facts: placeFacts(hookup),
        lists: [],
        cautions: ['Do not connect or energise this heating set before you are told again that it is ready.'],
        link: hookupLink(hookup, 'See which need is open'),
      },
    };
  },

  /** Only those hear it who were sent the notice it withdraws; a notice just being sent is waited for. */
  overtaken: async (tx, { notice, delivery }) => {
    const sourceKey = readyKey(notice.subjectId, countIn(notice.sourceKey));
    const told = await tx.$queryRaw<{ state: string }[]>`
      select ready.state::text as state from "Delivery" ready join "Notice" notice on notice.id = ready."noticeId"
      where notice."companyId" = ${notice.companyId}::uuid and notice."sourceKey" = ${sourceKey}
        and ready."recipientId" = ${delivery.recipientId}::uuid
      for update of ready`;
    return told.some(({ state }) => state === 'sent')
      ? null
      : 'not sent: the notice it withdraws was never sent';
  },
};
