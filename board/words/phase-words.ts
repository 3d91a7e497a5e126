import type { BoardPhaseFragment, PhaseState } from '../api/documents.js';

/** How far a phase is, in words. */
export const STATE_WORDS: Readonly<Record<PhaseState, string>> = {
  waiting: 'not started',
  started: 'started',
  done: 'done',
  dropped: 'dropped',
};

/** The name of a phase with its area, which most names of the template end with already: "Lay the cable: Walk". */
export function phaseTitle(phase: Pick<BoardPhaseFragment, 'name' | 'area'>): string {
  const { name, area } = phase;
  return !area || name.toLowerCase().includes(area.name.toLowerCase()) ? name : `${name}: ${area.name}`;
}

/** "started", or for a wait "wait, not started". */
export function stateWords(phase: Pick<BoardPhaseFragment, 'state' | 'durationKind'>): string {
  return phase.durationKind === 'elapsed' ? `wait, ${STATE_WORDS[phase.state]}` : STATE_WORDS[phase.state];
}

/** Who works it. */
export function crewWords(phase: BoardPhaseFragment): string {
  const crew = phase.actualCrew ?? phase.planned?.crew ?? phase.commitment?.crew;
  return crew?.name ?? (phase.durationKind === 'elapsed' ? 'no crew: a wait' : 'no crew yet');
}
