import type { Stretch } from '../../shared/owner-week/owner-facts.js';
import type { Commitment, Phase, PlannedPhase } from '../generated/prisma/client.js';

/** A phase with every date that there is of it. */
export type PhaseWithDates = Pick<Phase, 'kind' | 'state' | 'actualStart' | 'actualFinish'> & {
  readonly planned: Pick<PlannedPhase, 'startAt' | 'finishAt' | 'segments'> | null;
  readonly commitments: readonly Pick<Commitment, 'startAt' | 'finishAt'>[];
};

/**
 * When a phase is worked on, for people it was told to: as it was; else as it was agreed, for an agreed day moves only when
 * the office says so; else as it is planned. Pauses over nights and weekends are those of the plan where it keeps to what
 * was agreed.
 */
export function stretchesOf(phase: PhaseWithDates): { stretches: Stretch[]; agreed: boolean } {
  const { planned, actualStart, actualFinish, commitments } = phase;
  const [agreed] = commitments;
  if (phase.state === 'done' && actualStart && actualFinish)
    return { stretches: [{ from: actualStart.getTime(), until: actualFinish.getTime() }], agreed: true };
  if (phase.state === 'started' && actualStart) {
    const from = actualStart.getTime();
    // It began on its day, and goes on with the stretches of the plan.
    return { stretches: [{ from, until: from + 1 }, ...(planned ? segmentsOf(planned) : [])], agreed: true };
  }
  const keeps = agreed && planned && agreed.startAt.getTime() === planned.startAt.getTime();
  if (agreed && !keeps)
    return {
      stretches: [{ from: agreed.startAt.getTime(), until: agreed.finishAt.getTime() }],
      agreed: true,
    };
  return { stretches: planned ? segmentsOf(planned) : [], agreed: Boolean(agreed) };
}

function segmentsOf({ segments, startAt, finishAt }: NonNullable<PhaseWithDates['planned']>): Stretch[] {
  const stored = segments as unknown as readonly (readonly [number, number])[];
  return stored.length > 0
    ? stored.map(([from, until]) => ({ from, until }))
    : [{ from: startAt.getTime(), until: Math.max(finishAt.getTime(), startAt.getTime() + 1) }];
}
