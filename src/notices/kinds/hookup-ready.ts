import { electriciansOf } from '../recipients.js';
import type { NoticeKind } from '../notice-kind.js';
import { circuitFacts } from './hookup-circuit.js';
import { HOOKUP_CAUTIONS } from './hookup-cautions.js';
import { hookupOf } from './hookup-facts.js';
import { hookupLink, jobName, placeFacts, readingLines } from './hookup-message.js';
import { metNeeds } from './hookup-needs.js';
import { countIn, readyCountOf, readyKey, stillReady } from './ready-count.js';

/** Tells the electrician, once each time, that the leads are through the wall, tested and labelled. */
export const hookupReady: NoticeKind = {
  kind: 'hookup-ready',
  urgent: false,

  announce: async (tx, { companyId, ids, now }) => {
    const hookup = await hookupOf(tx, companyId, ids['hookupId']);
    const readyCount = readyCountOf(ids);
    if (!hookup || !stillReady(hookup, readyCount)) return null;
    return {
      sourceKey: readyKey(hookup.id, readyCount),
      jobId: hookup.jobId,
      subjectType: 'hookup',
      subjectId: hookup.id,
      recipientIds: await electriciansOf(tx, companyId, hookup.electricianId),
      usefulUntil: null,
      message: {
        subject: `Ready for hookup: ${jobName(hookup)}`,
        opening:
          readyCount > 1
            ? 'Every need of this hookup is met again. Look at the readings below; they may differ from the earlier notice. Please book a day.'
            : 'Every need of this hookup is met: the leads are through the wall, tested and labelled. Please book a day.',
        facts: [...placeFacts(hookup), ...circuitFacts(hookup.heatingSet)],
        lists: [
          { title: 'Needs met', items: await metNeeds(tx, hookup, now) },
          { title: 'Readings so far', items: readingLines(hookup) },
        ],
        cautions: HOOKUP_CAUTIONS,
        link: hookupLink(hookup, 'Book a day and see all readings'),
      },
    };
  },

  overtaken: async (tx, { notice }) => {
    const hookup = await tx.hookup.findUnique({ where: { id: notice.subjectId } });
    if (!hookup) return 'not sent: the hookup was removed';
    if (stillReady(hookup, countIn(notice.sourceKey))) return null;
    return hookup.state === 'done'
      ? 'not sent: the hookup was recorded before'
      : 'not sent: the readiness was withdrawn before';
  },
};
