import { electriciansOf, peopleOf } from '../recipients.js';
import { circuitFacts } from './hookup-circuit.js';
import { ENERGISING_CAUTIONS } from './hookup-cautions.js';
import { hookupOf } from './hookup-facts.js';
import { hookupLink, jobName, placeFacts, readingLines } from './hookup-message.js';
import type { NoticeKind } from '../notice-kind.js';
import { readyCountOf } from './ready-count.js';

/** Tells electrician and office that a connected heating set may be energised. */
export const energisingAllowed: NoticeKind = {
  kind: 'energising-allowed',
  urgent: false,

  announce: async (tx, { companyId, ids }) => {
    const hookup = await hookupOf(tx, companyId, ids['hookupId']);
    if (!hookup?.energiseAllowedAt || hookup.energisedAt) return null;
    return {
      sourceKey: `energising-allowed-${hookup.id}-${readyCountOf(ids)}`,
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
          { label: 'Allowed since', value: { at: hookup.energiseAllowedAt.toISOString() } },
        ],
        lists: [{ title: 'Readings', items: readingLines(hookup) }],
        cautions: ENERGISING_CAUTIONS,
        link: hookupLink(hookup, 'Record the energising'),
      },
    };
  },

  overtaken: async (tx, notice) => {
    const hookup = await tx.hookup.findUnique({ where: { id: notice.subjectId } });
    if (!hookup?.energiseAllowedAt) return 'not sent: energising is no longer allowed';
    return hookup.energisedAt ? 'not sent: the set was energised before' : null;
  },
};
