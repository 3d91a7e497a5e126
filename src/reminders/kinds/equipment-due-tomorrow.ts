import { crewOf, jobLink, jobName, phaseName, placeFacts, when } from '../about.js';
import { atHour } from '../local-time.js';
import type { ReminderKind } from '../reminder-kind.js';

const AFTERNOON = 14;

/** On the afternoon before a phase that needs equipment, office and foremen hear what must be on site. */
export const equipmentDueTomorrow: ReminderKind = {
  kind: 'equipment-due-tomorrow',
  audience: 'office and foremen',
  urgent: false,
  derive: ({ jobs }) =>
    jobs.flatMap((facts) =>
      facts.phases.flatMap((phase) => {
        if (phase.state !== 'waiting' || !phase.planned || phase.holds.length === 0) return [];
        const { startAt } = phase.planned;
        const items = phase.holds
          .map(({ pool, quantity }) => `${pool.name}: ${quantity} ${pool.unit}`)
          .sort();
        const heated = phase.holds.some(({ pool }) => pool.kind === 'heater');
        return {
          subjectType: 'phase',
          subjectId: phase.id,
          jobId: facts.job.id,
          dueAt: atHour(facts.site.zone, startAt, AFTERNOON, -1),
          usefulUntil: startAt,
          detail: {
            crewId: crewOf(phase),
            message: {
              subject: `Equipment due tomorrow for ${phaseName(phase)}: ${jobName(facts)}`,
              opening: `${phaseName(phase)} is planned for tomorrow and needs this equipment on site.`,
              facts: [...placeFacts(facts), when('Start as planned', startAt)],
              lists: [{ title: 'Equipment', items }],
              cautions: heated
                ? [
                    'Unvented heaters give off carbon monoxide: fresh air, and 10 ft from tarpaulins (29 CFR 1926.154).',
                  ]
                : [],
              link: jobLink(facts),
            },
          },
        };
      }),
    ),
};
