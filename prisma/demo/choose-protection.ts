import { type Hands, must } from './hands.js';
import { viewJob } from './job-view.js';

/** Kinds of phases that place what must cure. */
const POURS = ['footing-pour', 'block', 'walk-base'];

const WEEK = 7 * 24 * 3_600_000;

/**
 * The office has the first pour protected that is planned within the week of the forecast, if there is one; the plan and
 * the equipment follow.
 */
export async function chooseProtection(hands: Hands, jobIds: readonly string[], now: Date): Promise<void> {
  const jobs = await Promise.all(jobIds.map((id) => viewJob(hands.office, id)));
  const pours = jobs.flatMap(({ phases }) =>
    phases.flatMap(({ id, kind, state, planned }) => {
      const start = planned ? new Date(planned.startAt).getTime() : Infinity;
      return POURS.includes(kind) && state === 'waiting' && start < now.getTime() + WEEK
        ? [{ id, start }]
        : [];
    }),
  );
  const [first] = pours.sort((a, b) => a.start - b.start);
  if (!first) return;
  await must(hands.office, 'chooseProtection', {
    pour: { phaseId: first.id },
    branch: 'protect',
    reason: 'A cold spell is forecast, and the tent is free',
  });
}
