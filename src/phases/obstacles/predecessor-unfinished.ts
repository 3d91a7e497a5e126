import { PredecessorUnfinished } from '../errors/predecessor-unfinished.js';
import { bindsStart, linkBound } from './link-bound.js';
import { idsOf, messagesOf, type ObstacleCheck } from './obstacle.js';

/** Every link must hold: a predecessor that must finish, or start, first. */
export const predecessorUnfinished: ObstacleCheck = {
  find: ({ predecessors }, { gate }) =>
    predecessors
      .filter((predecessor) => bindsStart(predecessor) === (gate === 'start'))
      .map((predecessor) => ({ ...predecessor, bound: linkBound(predecessor) }))
      .filter(({ bound }) => !bound.met)
      .map(({ phase, bound }) => ({
        code: 'PredecessorUnfinished',
        message: `${phase.name} must ${bound.must} first.`,
        liftedBy: 'foreman',
        phaseId: phase.id,
      })),
  refuse: (found) => new PredecessorUnfinished(idsOf(found, 'phaseId'), messagesOf(found)),
};
