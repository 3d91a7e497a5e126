import type { HoldPoint } from '../../generated/prisma/client.js';
import { crewOf, jobLink, jobName, phaseName, placeFacts, when } from '../about.js';
import { atHour, plusHours } from '../local-time.js';
import type { ReminderKind } from '../reminder-kind.js';

const HOURS_AFTER = 48;

const STAGES: Record<NonNullable<HoldPoint['readingStage']>, string> = {
  received: 'before the cable is unrolled',
  laid: 'after laying, before anything covers the cable',
  covered: 'after covering',
  beforeHookup: 'before hookup',
};

/** On the morning of the day a cable reading gates a phase, the foremen are reminded to take it. */
export const readingDue: ReminderKind = {
  kind: 'reading-due',
  audience: 'foremen',
  urgent: false,
  derive: ({ jobs }) =>
    jobs.flatMap((facts) =>
      facts.phases.flatMap((phase) => {
        const { planned } = phase;
        if (!planned) return [];
        return phase.holdPoints
          .filter(({ kind, state }) => kind === 'reading' && (state === 'open' || state === 'refused'))
          .filter(({ gate }) => gate === 'start' || phase.state === 'started')
          .map((holdPoint) => {
            const gatedAt = holdPoint.gate === 'start' ? planned.startAt : planned.finishAt;
            return {
              subjectType: 'holdPoint',
              subjectId: holdPoint.id,
              jobId: facts.job.id,
              dueAt: atHour(facts.site.zone, gatedAt, 7),
              usefulUntil: plusHours(gatedAt, HOURS_AFTER),
              detail: {
                crewId: crewOf(phase),
                message: {
                  subject: `Cable reading due: ${holdPoint.title}, ${jobName(facts)}`,
                  opening: `Take resistance and insulation ${
                    holdPoint.readingStage ? STAGES[holdPoint.readingStage] : 'of the heating set'
                  }. ${phaseName(phase)} cannot ${holdPoint.gate} before the reading is within limits.`,
                  facts: [...placeFacts(facts), when('Needed by', gatedAt)],
                  lists: [],
                  cautions: [
                    'Nothing may cover the cable before its reading has passed.',
                    'Never energise the cable to test it.',
                  ],
                  link: jobLink(facts, 'Record the reading'),
                },
              },
            };
          });
      }),
    ),
};
