import { clearanceFault, ClearanceMissing } from '../../inspections/inspections.face.js';
import { idsOf, messagesOf, type ObstacleCheck } from './obstacle.js';

/** Permit, mark-out and material must be there on the day, and not lapsed. */
export const clearanceMissing: ObstacleCheck = {
  find: ({ holdPoints }, { gate, at }) =>
    holdPoints
      .filter((point) => point.kind === 'clearance' && point.gate === gate && point.state !== 'waived')
      .flatMap(({ id, clearance, state, title, reason }) => {
        if (!clearance) return [];
        const refused = state === 'refused' ? `${title} was refused: ${reason ?? ''}` : null;
        const fault = clearanceFault(clearance, at) ?? refused;
        if (!fault) return [];
        return [
          {
            code: 'ClearanceMissing',
            message: fault,
            liftedBy: 'office' as const,
            holdPointId: id,
            clearanceId: clearance.id,
          },
        ];
      }),
  refuse: (found) => new ClearanceMissing(idsOf(found, 'clearanceId'), messagesOf(found)),
};
