import { HoldPointOpen } from '../../inspections/inspections.face.js';
import { idsOf, messagesOf, type ObstacleCheck } from './obstacle.js';

/** Checks and cures of the gate must be released, or waived by name and reason. */
export const holdPointOpen: ObstacleCheck = {
  find: ({ holdPoints }, { gate }) =>
    holdPoints
      .filter(({ kind }) => kind === 'check' || kind === 'cure')
      .filter((point) => point.gate === gate && point.state !== 'released' && point.state !== 'waived')
      .map(({ id, title, state, reason }) => ({
        code: 'HoldPointOpen',
        message:
          state === 'refused' ? `${title} was refused: ${reason ?? ''}` : `${title} is not released yet.`,
        liftedBy: 'foreman',
        holdPointId: id,
      })),
  refuse: (found) => new HoldPointOpen(idsOf(found, 'holdPointId'), messagesOf(found)),
};
