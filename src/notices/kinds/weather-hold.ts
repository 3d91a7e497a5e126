import type { NoticeKind, NoticeKindName } from '../notice-kind.js';
import { crewPeopleOf, peopleOf } from '../recipients.js';
import { affectedBy, holdsKey, holdsOf, idsIn, namedHolds, stands } from './weather-hold-facts.js';
import { heldName, holdFacts, holdLink, LIMIT_CAUTION, whyLines } from './weather-hold-message.js';

/**
 * Tells office and crew that the weather holds work of the next 72 hours: once when the hold opens, and again when it
 * moves by hours or another limit causes it. Whoever called it does not hear it.
 */
function holdNotice(kind: NoticeKindName, urgent: boolean): NoticeKind {
  return {
    kind,
    urgent,

    announce: async (tx, { companyId, now, ids }) => {
      const named = namedHolds(ids);
      const tellings = new Map(named.holds.map(({ id, telling }) => [id, telling]));
      const rows = await holdsOf(tx, companyId, [...tellings.keys()]);
      const holds = rows.filter((hold) => stands(hold, now) && hold.tellings === tellings.get(hold.id));
      const [first] = holds;
      if (!first) return null;
      const affected = await affectedBy(tx, first, now);
      const people = [
        ...(await peopleOf(tx, companyId, 'office')),
        ...(await crewPeopleOf(
          tx,
          companyId,
          affected.map(({ crewId }) => crewId),
        )),
      ];
      const again = holds.every(({ tellings: times }) => times > 1);
      const ends = holds.flatMap(({ endsAt }) => endsAt ?? []);
      return {
        sourceKey: holdsKey(kind, { holds: holds.map(({ id, tellings: telling }) => ({ id, telling })) }),
        jobId: first.phase?.jobId ?? null,
        subjectType: first.phase ? 'phase' : 'site',
        subjectId: first.phaseId ?? first.siteId,
        recipientIds: [...new Set(people)].filter((id) => id !== named.by),
        usefulUntil: ends.length === holds.length ? new Date(Math.max(...ends.map(Number))) : null,
        message: {
          subject: `${again ? 'Weather hold moved' : 'Weather hold'}: ${heldName(first)}`,
          opening: again
            ? 'The hours in which the weather holds this work have changed. The plan keeps it out of them; protect it or wait.'
            : 'The weather holds this work. The plan keeps it out of these hours; protect it or wait.',
          facts: holdFacts(holds, affected),
          lists: [{ title: 'Why', items: whyLines(holds) }],
          cautions: [LIMIT_CAUTION],
          link: holdLink(first, 'See the weather and the plan'),
        },
      };
    },

    overtaken: async (tx, { notice, now }) => {
      const holds = await holdsOf(tx, notice.companyId, idsIn(notice.sourceKey));
      return holds.some((hold) => stands(hold, now)) ? null : 'not sent: the hold is lifted or over';
    },
  };
}

/** A hold that begins later than in twelve hours waits for the end of quiet hours. */
export const weatherHold: NoticeKind = holdNotice('weather-hold', false);

/** A hold that begins within twelve hours is told at night too: a crew may be about to leave. */
export const weatherHoldSoon: NoticeKind = holdNotice('weather-hold-soon', true);
