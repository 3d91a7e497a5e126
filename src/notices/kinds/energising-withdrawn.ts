import type { NoticeKind } from '../notice-kind.js';
import { allowedKey, leaveIn, withdrawnLeaveKey } from './energising-key.js';
import { hookupOf } from './hookup-facts.js';
import { hookupLink, jobName, placeFacts } from './hookup-message.js';
import { addressedBy, neverTold } from './told-before.js';

/** Tells whoever was told that a set may be energised that it may not any more. Sent at once: somebody may act on it. */
export const energisingWithdrawn: NoticeKind = {
  kind: 'energising-withdrawn',
  urgent: true,

  announce: async (tx, { companyId, ids }) => {
    const hookup = await hookupOf(tx, companyId, ids['hookupId']);
    const toldAt = new Date(String(ids['allowedAt']));
    if (!hookup || hookup.energisedAt) return null;
    const recipientIds = await addressedBy(tx, companyId, allowedKey(hookup.id, toldAt));
    if (!recipientIds) return null;
    return {
      sourceKey: withdrawnLeaveKey(hookup.id, toldAt),
      jobId: hookup.jobId,
      subjectType: 'hookup',
      subjectId: hookup.id,
      recipientIds,
      usefulUntil: null,
      message: {
        subject: `Do not energise: ${jobName(hookup)}`,
        opening:
          'Something that the leave to energise rested on holds no longer, so the earlier notice is withdrawn. Leave the set dead. You will hear again when it may be energised.',
        facts: placeFacts(hookup),
        lists: [],
        cautions: ['De-energise, lock and verify before anybody works on the set or its bed.'],
        link: hookupLink(hookup, 'See what is open'),
      },
    };
  },

  overtaken: (tx, sending) =>
    neverTold(tx, sending, allowedKey(sending.notice.subjectId, leaveIn(sending.notice.sourceKey))),
};
