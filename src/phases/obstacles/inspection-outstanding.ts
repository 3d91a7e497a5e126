import { localTime } from '../../platform/local-time.js';
import { InspectionOutstanding } from '../../inspections/inspections.face.js';
import { idsOf, messagesOf, type ObstacleCheck } from './obstacle.js';

/**
 * No footing is poured, nothing is concealed, before the authority has passed it (IRC 2018 R109.1). A pass that came
 * after the moment asked about does not count for it.
 */
export const inspectionOutstanding: ObstacleCheck = {
  find: ({ holdPoints, zone }, { gate, at }) =>
    holdPoints
      .filter((point) => point.kind === 'inspection' && point.gate === gate)
      .filter(({ state, inspection }) => state !== 'released' || (inspection?.resultAt ?? at) > at)
      .map(({ id, title, state, inspection }) => ({
        code: 'InspectionOutstanding',
        message:
          state === 'released'
            ? `${title}: the inspection passed only at ${inspection?.resultAt ? localTime(inspection.resultAt, zone) : 'a later time'}.`
            : `${title}: the inspection has not passed${inspection ? ` (${inspection.state})` : ''}; the authority must pass it first.`,
        liftedBy: 'office',
        holdPointId: id,
        ...(inspection && { inspectionId: inspection.id }),
      })),
  refuse: (found) => new InspectionOutstanding(idsOf(found, 'inspectionId'), messagesOf(found)),
};
