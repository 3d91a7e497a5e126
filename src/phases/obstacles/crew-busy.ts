import { CrewBusy } from '../errors/crew-busy.js';
import type { ObstacleCheck } from './obstacle.js';

/** A crew is at one phase at a time. */
export const crewBusy: ObstacleCheck = {
  find: ({ crew, crewWork }, { gate }) =>
    gate === 'start' && crew
      ? crewWork.map((phase) => ({
          code: 'CrewBusy',
          message: `${crew.name} is busy with ${phase.name}.`,
          liftedBy: 'foreman',
          phaseId: phase.id,
        }))
      : [],
  refuse: (found, { crew, crewWork }) => {
    const phase = crewWork.find(({ id }) => id === found[0]?.phaseId);
    if (!crew || !phase?.actualStart) throw new Error('A busy crew has a started phase');
    return new CrewBusy({
      crewId: crew.id,
      crewName: crew.name,
      phaseId: phase.id,
      phaseName: phase.name,
      from: phase.actualStart,
      to: phase.actualFinish,
    });
  },
};
