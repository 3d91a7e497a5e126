import { localTime } from '../../platform/local-time.js';
import { BeforePredecessor } from '../errors/before-predecessor.js';
import { bindsStart, linkBound } from './link-bound.js';
import { idsOf, messagesOf, type ObstacleCheck } from './obstacle.js';

/** Nothing starts or finishes before the time that a predecessor and the lag of its link allow. */
export const beforePredecessor: ObstacleCheck = {
  find: ({ predecessors, zone }, { gate, at }) =>
    predecessors
      .filter((predecessor) => bindsStart(predecessor) === (gate === 'start'))
      .map((predecessor) => ({ ...predecessor, bound: linkBound(predecessor) }))
      .filter(({ bound }) => bound.met && bound.from !== null && bound.from > at)
      .map(({ phase, link, bound }) => ({
        code: 'BeforePredecessor',
        message: `${phase.name} allows this from ${bound.from ? localTime(bound.from, zone) : 'a later time'}${link.lagMinutes > 0 ? ', after its lag' : ''}; enter a later time.`,
        liftedBy: null,
        phaseId: phase.id,
      })),
  refuse: (found) => new BeforePredecessor(idsOf(found, 'phaseId'), messagesOf(found)),
};
