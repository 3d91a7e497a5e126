import { crewOf, jobLink, jobName, phaseName, placeFacts, when } from '../about.js';
import { plusHours } from '../local-time.js';
import type { ReminderKind } from '../reminder-kind.js';

const HOURS_BEFORE = 4;
const HOURS_AFTER = 48;

/** Four hours before a started phase is planned to finish, the foremen hear which of its finish gates are still open. */
export const holdPointPending: ReminderKind = {
  kind: 'hold-point-pending',
  audience: 'foremen',
  urgent: false,
  derive: ({ jobs }) =>
    jobs.flatMap((facts) =>
      facts.phases.flatMap((phase) => {
        // Cure and readings have reminders of their own.
        const open = phase.holdPoints.filter(
          ({ gate, kind, state }) =>
            gate === 'finish' &&
            kind !== 'cure' &&
            kind !== 'reading' &&
            (state === 'open' || state === 'refused'),
        );
        if (phase.state !== 'started' || !phase.planned || open.length === 0) return [];
        const { finishAt } = phase.planned;
        return {
          subjectType: 'phase',
          subjectId: phase.id,
          jobId: facts.job.id,
          dueAt: plusHours(finishAt, -HOURS_BEFORE),
          usefulUntil: plusHours(finishAt, HOURS_AFTER),
          detail: {
            crewId: crewOf(phase),
            message: {
              subject: `Open before the finish of ${phaseName(phase)}: ${jobName(facts)}`,
              opening: `${phaseName(phase)} cannot be finished before these hold points are released.`,
              facts: [...placeFacts(facts), when('Finish as planned', finishAt)],
              lists: [{ title: 'Hold points', items: open.map(({ title }) => title).sort() }],
              cautions: open.flatMap(({ caution }) => caution ?? []),
              link: jobLink(facts, 'Release the hold points'),
            },
          },
        };
      }),
    ),
};
