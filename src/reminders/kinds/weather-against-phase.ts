import { crewOf, jobLink, jobName, phaseName, placeFacts, when } from '../about.js';
import { atHour, plusHours } from '../local-time.js';
import type { ReminderKind } from '../reminder-kind.js';

const DAYS_BEFORE = 3;
const OPEN_HOURS = 24;

/** When the forecast turns against a phase of the next 72 hours, office and foremen hear it, at night too. */
export const weatherAgainstPhase: ReminderKind = {
  kind: 'weather-against-phase',
  audience: 'office and foremen',
  urgent: true,
  derive: ({ jobs }) =>
    jobs.flatMap((facts) =>
      facts.phases.flatMap((phase) => {
        const holds = facts.weatherHolds.filter(({ phaseId }) => phaseId === phase.id);
        const [first] = holds;
        if (!first) return [];
        const ends = holds.map(({ startsAt, endsAt }) => endsAt ?? plusHours(startsAt, OPEN_HOURS));
        return {
          subjectType: 'phase',
          subjectId: phase.id,
          jobId: facts.job.id,
          dueAt: atHour(facts.site.zone, first.startsAt, 0, -DAYS_BEFORE),
          usefulUntil: new Date(Math.max(...ends.map((end) => end.getTime()))),
          detail: {
            crewId: crewOf(phase),
            message: {
              subject: `Weather against ${phaseName(phase)}: ${jobName(facts)}`,
              opening: `The forecast is against ${phaseName(phase)}. The plan keeps it out of these hours; protect it or wait.`,
              facts: [
                ...placeFacts(facts),
                when('From', first.startsAt),
                ...(phase.planned ? [when('Now planned for', phase.planned.startAt)] : []),
              ],
              lists: [{ title: 'Why', items: [...new Set(holds.map(({ reason }) => reason))] }],
              cautions: [],
              link: jobLink(facts, 'See the weather and the plan'),
            },
          },
        };
      }),
    ),
};
