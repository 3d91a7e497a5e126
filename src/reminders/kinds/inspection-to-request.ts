import { crewOf, jobLink, jobName, phaseName, placeFacts, when } from '../about.js';
import { atHour } from '../local-time.js';
import type { ReminderKind } from '../reminder-kind.js';

/** The office is reminded on the morning of the day before the latest request that still gives the planned visit. */
export const inspectionToRequest: ReminderKind = {
  kind: 'inspection-to-request',
  audience: 'office',
  urgent: false,
  derive: ({ jobs }) =>
    jobs.flatMap((facts) =>
      facts.inspections.flatMap((inspection) => {
        const { planned } = inspection;
        const phase = facts.phases.find(({ id }) => id === inspection.phaseId);
        if (inspection.state !== 'needed' || !planned || !phase) return [];
        const again = inspection.attempt > 1 ? ` (visit ${inspection.attempt})` : '';
        return {
          subjectType: 'inspection',
          subjectId: inspection.id,
          jobId: facts.job.id,
          dueAt: atHour(facts.site.zone, planned.requestBy, 7, -1),
          usefulUntil: planned.startAt,
          detail: {
            crewId: crewOf(phase),
            message: {
              subject: `Inspection to request: ${inspection.title}${again}, ${jobName(facts)}`,
              opening: `The inspection "${inspection.title}" has not been requested yet; ${phaseName(phase)} waits for it.`,
              facts: [
                ...placeFacts(facts),
                when('Request at the latest', planned.requestBy),
                when('Visit as planned', planned.startAt),
              ],
              lists: [],
              cautions: [],
              link: jobLink(facts, 'Request the inspection'),
            },
          },
        };
      }),
    ),
};
