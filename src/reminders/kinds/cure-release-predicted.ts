import { crewOf, jobLink, jobName, phaseName, placeFacts, when } from '../about.js';
import type { JobFacts } from '../facts.js';
import { inWorkingDay, plusHours } from '../local-time.js';
import type { ReminderKind } from '../reminder-kind.js';

const HOURS_AFTER = 72;

/** When a placement is predicted to be strong enough, the foremen are asked to measure; a prediction never releases. */
export const cureReleasePredicted: ReminderKind = {
  kind: 'cure-release-predicted',
  audience: 'foremen',
  urgent: false,
  derive: ({ jobs }) =>
    jobs.flatMap((facts) =>
      facts.placements.flatMap((placement) => {
        const gated = gatedBy(facts, placement.phaseId);
        if (!placement.predictedReleaseAt || !gated || !isNewest(facts, placement.id)) return [];
        const dueAt = inWorkingDay(facts.site.zone, placement.predictedReleaseAt);
        return {
          subjectType: 'placement',
          subjectId: placement.id,
          jobId: facts.job.id,
          dueAt,
          usefulUntil: plusHours(dueAt, HOURS_AFTER),
          detail: {
            crewId: crewOf(gated),
            message: {
              subject: `Cure predicted to reach its strength: ${jobName(facts)}`,
              opening: `The ${placement.material} is predicted to have the strength that ${phaseName(gated)} waits for. Read its temperature and record it: only measured readings, or a named person with a reason, release the hold point.`,
              facts: [
                ...placeFacts(facts),
                { label: 'Strength needed', value: `${placement.requiredPsi} psi` },
                when('Placed', placement.placedAt),
                when('Predicted', placement.predictedReleaseAt),
              ],
              lists: [],
              cautions: [
                'A strength figure is an estimate from temperature. Loads that can hurt someone wait for the engineer or the authority.',
              ],
              link: jobLink(facts, 'Record a temperature'),
            },
          },
        };
      }),
    ),
};

/** The phase whose open cure hold point waits for a placement of the given phase. */
function gatedBy({ phases }: JobFacts, placedIn: string) {
  return phases.find(({ holdPoints }) =>
    holdPoints.some(
      ({ kind, state, placementPhaseId }) =>
        kind === 'cure' && placementPhaseId === placedIn && (state === 'open' || state === 'refused'),
    ),
  );
}

/** Whether no later placement of the same phase stands in its stead. */
function isNewest({ placements }: JobFacts, id: string): boolean {
  const placement = placements.find((one) => one.id === id);
  return !placements.some(
    (other) => other.phaseId === placement?.phaseId && other.placedAt > placement.placedAt,
  );
}
