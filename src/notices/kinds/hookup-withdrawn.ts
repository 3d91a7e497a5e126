import { hookupOf } from './hookup-facts.js';
import { hookupLink, jobName, placeFacts } from './hookup-message.js';
import type { NoticeKind } from '../notice-kind.js';
import { countIn, readyCountOf, readyKey, withdrawnKey } from './ready-count.js';
import { addressedBy, neverTold } from './told-before.js';

/** Tells whoever was told that a hookup is ready that a need is no longer met. Sent at once: somebody may be on the way. */
export const hookupWithdrawn: NoticeKind = {
  kind: 'hookup-withdrawn',
  urgent: true,

  announce: async (tx, { companyId, ids }) => {
    const hookup = await hookupOf(tx, companyId, ids['hookupId']);
    if (!hookup) return null;
    const readyCount = readyCountOf(ids);
    const recipientIds = await addressedBy(tx, companyId, readyKey(hookup.id, readyCount));
    if (!recipientIds) return null;
    return {
      sourceKey: withdrawnKey(hookup.id, readyCount),
      jobId: hookup.jobId,
      subjectType: 'hookup',
      subjectId: hookup.id,
      recipientIds,
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

  /** Only those hear it who were sent the notice it withdraws. */
  overtaken: (tx, sending) =>
    neverTold(tx, sending, readyKey(sending.notice.subjectId, countIn(sending.notice.sourceKey))),
};
