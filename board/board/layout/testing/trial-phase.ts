import type { BoardPhaseFragment } from '../../../api/documents.js';

/** A phase for trials of the layout: planned Monday 7 AM to 3 PM in New York unless told otherwise. */
export function trialPhase(changes: Partial<BoardPhaseFragment> = {}): BoardPhaseFragment {
  return {
    id: 'p1',
    name: 'Dig to frost depth',
    hatch: 'earth',
    trade: 'labour',
    position: 1,
    durationKind: 'work',
    state: 'waiting',
    weatherLimitKey: null,
    pinnedStart: null,
    actualStart: null,
    actualFinish: null,
    revision: 1,
    job: { id: 'j1', number: 101 },
    area: null,
    actualCrew: null,
    planned: trialPlan('2031-01-13T12:00:00Z', '2031-01-13T20:00:00Z'),
    commitment: null,
    holdPoints: [],
    ...changes,
  };
}

/** A plan of one stretch by the crew c1. */
export function trialPlan(startAt: string, finishAt: string): NonNullable<BoardPhaseFragment['planned']> {
  return {
    startAt,
    finishAt,
    totalFloatMinutes: 60,
    freeFloatMinutes: 0,
    critical: false,
    weatherUnknown: false,
    crew: { id: 'c1', name: 'First masons' },
    segments: [{ from: startAt, to: finishAt }],
  };
}

/** A commitment of the crew c1. */
export function trialCommitment(
  startAt: string,
  finishAt: string,
): NonNullable<BoardPhaseFragment['commitment']> {
  return { id: 'm1', startAt, finishAt, state: 'held', crew: { id: 'c1', name: 'First masons' } };
}
