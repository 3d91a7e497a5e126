import { electriciansOf, peopleOf } from '../recipients.js';
import { allowedKey } from './energising-key.js';
import { circuitFacts } from './hookup-circuit.js';
import { ENERGISING_CAUTIONS } from './hookup-cautions.js';
import { hookupOf } from './hookup-facts.js';
import { hookupLink, jobName, placeFacts, readingLines } from './hookup-message.js';
import type { NoticeKind } from '../notice-kind.js';

/** Tells electrician and office that a connected heating set may be energised. */
export const energisingAllowed: NoticeKind = {
  kind: 'energising-allowed',
  urgent: false,

  announce: async (tx, { companyId, ids, now }) => {
    const hookup = await hookupOf(tx, companyId, ids['hookupId']);
    const allowedAt = hookup?.energiseAllowedAt;
    // The leave may have been taken back, or moved to a later day that has a row of its own.
    if (!hookup || !allowedAt || allowedAt > now || hookup.energisedAt) return null;
    return {
      sourceKey: allowedKey(hookup.id, allowedAt),
      jobId: hookup.jobId,
      subjectType: 'hookup',
      subjectId: hookup.id,
      recipientIds: [
        ...new Set([
          ...(await electriciansOf(tx, companyId, hookup.electricianId)),
          ...(await peopleOf(tx, companyId, 'office')),
        ]),
      ],
      usefulUntil: null,
      message: {
        subject: `May be energised: ${jobName(hookup)}`,
        opening:
          'The hookup is recorded, the final inspection has passed and the bed has cured for the days the heating set asks. The set may be energised and handed over.',
        facts: [
          ...placeFacts(hookup),
          ...circuitFacts(hookup.heatingSet),
          { label: 'Allowed since', value: { at: allowedAt.toISOString() } },
        ],
        lists: [{ title: 'Readings', items: readingLines(hookup) }],
        cautions: ENERGISING_CAUTIONS,
        link: hookupLink(hookup, 'Record the energising'),
      },
    };
  },

  overtaken: async (tx, { notice }) => {
    const hookup = await tx.hookup.findUnique({ where: { id: notice.subjectId } });
    const allowedAt = hookup?.energiseAllowedAt;
    if (!hookup || !allowedAt || allowedKey(hookup.id, allowedAt) !== notice.sourceKey)
      return 'not sent: the leave to energise was taken back or moved';
    return hookup.energisedAt ? 'not sent: the set was energised before' : null;
  },
};
