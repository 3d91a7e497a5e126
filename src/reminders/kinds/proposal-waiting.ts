import { when } from '../about.js';
import { plusHours } from '../local-time.js';
import type { ReminderKind } from '../reminder-kind.js';

const HOURS_BEFORE_REMINDING = 0.25;
const HOURS_USEFUL = 7 * 24;

/** A quarter of an hour after a proposal was opened and not decided, the office is told that it waits. */
export const proposalWaiting: ReminderKind = {
  kind: 'proposal-waiting',
  audience: 'office',
  urgent: false,
  derive: ({ openProposal }) => {
    if (!openProposal) return [];
    const { id, number, createdAt, cause, differences } = openProposal;
    const moved = Array.isArray(differences) ? differences.length : 0;
    return [
      {
        subjectType: 'proposal',
        subjectId: id,
        jobId: null,
        dueAt: plusHours(createdAt, HOURS_BEFORE_REMINDING),
        usefulUntil: plusHours(createdAt, HOURS_USEFUL),
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
