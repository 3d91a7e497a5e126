import { NeedsMissing } from '../../hookups/hookups.face.js';
import { type ObstacleCheck } from './obstacle.js';

/** The electrician connects nothing before the leads are through, labelled and tested. */
export const needsMissing: ObstacleCheck = {
  find: ({ hookup }, { gate }) =>
    gate === 'start' && hookup
      ? hookup.needs
          .filter(({ met }) => !met)
          .map(({ text }) => ({ code: 'NeedsMissing', message: text, liftedBy: 'foreman' }))
      : [],
  refuse: (_, { hookup, phase }) => new NeedsMissing(hookup?.needs ?? [], phase.name),
};
