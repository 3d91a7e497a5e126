import { crewOf, jobLink, jobName, phaseName, placeFacts, when } from '../about.js';
import { atHour } from '../local-time.js';
import type { ReminderKind } from '../reminder-kind.js';

const DAYS_BEFORE = 3;

/** Three days before a mark-out lapses while a phase still relies on it, office and foremen are told. */
export const markOutLapsing: ReminderKind = {
  kind: 'mark-out-lapsing',
  audience: 'office and foremen',
  urgent: false,
  derive: ({ jobs }) =>
    jobs.flatMap((facts) =>
      facts.clearances.flatMap((clearance) => {
        const { kind, state, lapsesAt } = clearance;
        const waiting = facts.phases.filter(({ holdPoints }) =>
          holdPoints.some(({ clearanceId }) => clearanceId === clearance.id),
        );
        const [first] = waiting;
        if (kind !== 'markOut' || state !== 'cleared' || !lapsesAt || !first) return [];
        return {
          subjectType: 'clearance',
          subjectId: clearance.id,
          jobId: facts.job.id,
          dueAt: atHour(facts.site.zone, lapsesAt, 7, -DAYS_BEFORE),
          usefulUntil: lapsesAt,
          detail: {
            crewId: crewOf(first),
            message: {
              subject: `Mark-out about to lapse: ${jobName(facts)}`,
              opening: `${clearance.title} lapses while work that relies on it is not done. Ask for it again in time, or finish before.`,
              facts: [
                ...placeFacts(facts),
                ...(clearance.reference ? [{ label: 'Ticket', value: clearance.reference }] : []),
                when('Lapses', lapsesAt),
              ],
              lists: [{ title: 'Relies on it', items: waiting.map(phaseName) }],
              cautions: ['Do not dig without a mark-out that is valid on the day.'],
              link: jobLink(facts, 'Ask for the mark-out again'),
            },
          },
        };
      }),
    ),
};
