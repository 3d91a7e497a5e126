import { crewOf, jobLink, jobName, phaseName, placeFacts, when } from '../about.js';
import { atHour } from '../local-time.js';
import type { ReminderKind } from '../reminder-kind.js';

/** On the morning of a booked visit office and foremen are told. */
export const visitToday: ReminderKind = {
  kind: 'visit-today',
  audience: 'office and foremen',
  urgent: false,
  derive: ({ jobs }) =>
    jobs.flatMap((facts) =>
      facts.inspections.flatMap((inspection) => {
        const { state, visitFrom, visitTo } = inspection;
        if (state !== 'booked' || !visitFrom || !visitTo) return [];
        const phase = facts.phases.find(({ id }) => id === inspection.phaseId);
        return {
          subjectType: 'inspection',
          subjectId: inspection.id,
          jobId: facts.job.id,
          dueAt: atHour(facts.site.zone, visitFrom, 6),
          usefulUntil: visitTo,
          detail: {
            crewId: crewOf(phase),
            message: {
              subject: `Inspector comes today: ${inspection.title}, ${jobName(facts)}`,
              opening: `The visit for "${inspection.title}" is booked for today.${
                phase ? ` ${phaseName(phase)} waits for its result.` : ''
              } Leave the work open to view.`,
              facts: [...placeFacts(facts), when('From', visitFrom), when('To', visitTo)],
              lists: [],
              cautions: [],
              link: jobLink(facts, 'Record the result'),
            },
          },
        };
      }),
    ),
};
