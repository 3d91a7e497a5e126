import type { Crew, Phase } from './model.js';

/** Whether a crew may do a phase: it is the one that must, where one is named, and has the trade, where one is asked for. */
export function canDo(crew: Crew, { trade, crewId }: Pick<Phase, 'trade' | 'crewId'>): boolean {
  return (crewId === undefined || crew.id === crewId) && (trade === undefined || crew.trades.includes(trade));
}
