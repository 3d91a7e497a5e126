import { when } from '../about.js';
import { atHour, plusHours } from '../local-time.js';
import type { ReminderKind } from '../reminder-kind.js';

/** The plan moves many times a day; the office is told once, in the morning, and finds the newest proposal. */
const MORNING = 7;
const HOURS_USEFUL = 24;

/** In the morning after a proposal was opened and not decided, the office is told that it waits: once a day at most. */
export const proposalWaiting: ReminderKind = {
  kind: 'proposal-waiting',
  audience: 'office',
  urgent: false,
  derive: ({ openProposal, zone }) => {
    if (!openProposal) return [];
    const { companyId, number, createdAt, cause, differences } = openProposal;
    const moved = Array.isArray(differences) ? differences.length : 0;
    const sameDay = atHour(zone, createdAt, MORNING);
    const dueAt = sameDay >= createdAt ? sameDay : atHour(zone, createdAt, MORNING, 1);
    return [
      {
        subjectType: 'company',
        subjectId: companyId,
        jobId: null,
        dueAt,
        usefulUntil: plusHours(dueAt, HOURS_USEFUL),
        detail: {
          crewId: null,
          message: {
            subject: `Proposal ${number} waits for you`,
            opening: `The plan differs from the dates that people were told${
              moved > 0 ? ` for ${moved} ${moved === 1 ? 'phase' : 'phases'}` : ''
            }. Accept or drop the proposal.`,
            facts: [{ label: 'Cause', value: cause }, when('Opened', createdAt)],
            lists: [],
            cautions: [],
            link: { words: 'Look at the proposal', path: '/' },
          },
        },
      },
    ];
  },
};
