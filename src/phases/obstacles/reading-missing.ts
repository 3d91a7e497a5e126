import { forbidsStage } from '../../heating/heating.face.js';
import { ReadingMissing } from '../../inspections/inspections.face.js';
import { localTime } from '../../platform/local-time.js';
import type { PhaseFacts } from '../facts/phase-facts.js';
import { type FoundObstacle, messagesOf, type Moment, type ObstacleCheck } from './obstacle.js';

/**
 * Nothing covers, joins or connects a cable whose reading is not accepted, was accepted only later, or has failed
 * since at an earlier stage.
 */
export const readingMissing: ObstacleCheck = {
  find: (facts, moment) => [...notReleased(facts, moment), ...failedSince(facts, moment)],
  refuse: (found, { phase, holdPoints }) => {
    const point = holdPoints.find(({ id }) => id === found[0]?.holdPointId);
    if (!point?.heatingSetId || !point.readingStage)
      throw new Error(`Phase ${phase.id} waits for a reading of no heating set`);
    return new ReadingMissing(point.heatingSetId, point.readingStage, phase.areaId, messagesOf(found));
  },
};

function notReleased({ holdPoints, zone }: PhaseFacts, { gate, at }: Moment): FoundObstacle[] {
  return holdPoints
    .filter((point) => point.kind === 'reading' && point.gate === gate)
    .filter(({ state, decidedAt }) => state !== 'released' || (decidedAt ?? at) > at)
    .map(({ id, title, state, decidedAt }) => ({
      code: 'ReadingMissing',
      message:
        state === 'released'
          ? `${title}: the accepted reading was taken only at ${decidedAt ? localTime(decidedAt, zone) : 'a later time'}.`
          : `${title}: no accepted reading stands; take it and record it.`,
      liftedBy: 'foreman',
      holdPointId: id,
    }));
}

function failedSince({ holdPoints, failing }: PhaseFacts, { gate }: Moment): FoundObstacle[] {
  if (gate !== 'start') return [];
  return failing.flatMap((reading) =>
    holdPoints
      .filter(({ kind, heatingSetId }) => kind === 'reading' && heatingSetId === reading.heatingSetId)
      .filter(({ readingStage }) => readingStage && forbidsStage(reading.stage, readingStage))
      .slice(0, 1)
      .map(({ id }) => ({
        code: 'ReadingMissing',
        message: `The latest reading of the heating set (${reading.stage}) is outside its limits: find the cause and read again.`,
        liftedBy: 'foreman' as const,
        holdPointId: id,
      })),
  );
}
