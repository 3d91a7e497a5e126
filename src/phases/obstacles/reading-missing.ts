import { ReadingMissing } from '../../inspections/inspections.face.js';
import { messagesOf, type ObstacleCheck } from './obstacle.js';

/** Nothing covers, joins or connects a cable whose reading is not accepted, or was accepted only later. */
export const readingMissing: ObstacleCheck = {
  find: ({ holdPoints }, { gate, at }) =>
    holdPoints
      .filter((point) => point.kind === 'reading' && point.gate === gate)
      .filter(({ state, decidedAt }) => state !== 'released' || (decidedAt ?? at) > at)
      .map(({ id, title, state, decidedAt }) => ({
        code: 'ReadingMissing',
        message:
          state === 'released'
            ? `${title}: the accepted reading was taken only at ${decidedAt?.toISOString()}.`
            : `${title}: no accepted reading stands; take it and record it.`,
        liftedBy: 'foreman',
        holdPointId: id,
      })),
  refuse: (found, { phase, holdPoints }) => {
    const point = holdPoints.find(({ id }) => id === found[0]?.holdPointId);
    if (!point?.heatingSetId || !point.readingStage)
      throw new Error(`Phase ${phase.id} waits for a reading of no heating set`);
    return new ReadingMissing(point.heatingSetId, point.readingStage, phase.areaId, messagesOf(found));
  },
};
