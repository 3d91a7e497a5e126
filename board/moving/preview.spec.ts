import { describe, expect, it } from '@jest/globals';
import type { PlanInput } from '../../shared/schedule/model.js';
import { Planner } from '../../shared/schedule/planner.js';
import { slot } from '../../shared/schedule/slot.js';
import { inputWith, link, work } from '../../shared/schedule/spec-input.js';
import { trialPhase } from '../board/layout/testing/trial-phase.js';
import type { BoardData } from '../board/layout/rows.js';
import type { PlannedHere } from '../planning/use-planner.js';
import { previewMove } from './preview.js';
import { previewWords } from './words/preview-words.js';

/* Midnight in New York on Monday 6 January 2031 is slot 0; days are open from 07:00 to 15:00; one mason crew. By hand. */
const ZONE = 'America/New_York';
const scale = { startsAt: '2031-01-06T05:00:00Z', slotMinutes: 15 };
const at = (iso: string) => Date.parse(iso);

const board = {
  jobs: [
    { id: 'job', number: 101, name: 'Landing' },
    { id: 'other', number: 102, name: 'Steps' },
  ],
  crews: [{ id: 'masons', name: 'First masons', trades: ['mason'] }],
  phases: [
    trialPhase({ id: 'footing', name: 'footing', job: { id: 'job', number: 101 } }),
    trialPhase({ id: 'wall', name: 'wall', job: { id: 'job', number: 101 } }),
  ],
} as unknown as BoardData;

function planned(part: Partial<PlanInput> = {}): PlannedHere {
  const input = inputWith({
    jobs: [
      { id: 'job', priority: 0, due: slot(2 * 96) },
      { id: 'other', priority: 1 },
    ],
    phases: [
      work('footing', 32, { previous: { start: slot(28) } }),
      work('wall', 32, {
        previous: { start: slot(96 + 28) },
        commitment: { start: slot(96 + 28), finish: slot(96 + 60), crewId: 'masons' },
      }),
      work('step', 32, { jobId: 'other', previous: { start: slot(2 * 96 + 28) } }),
    ],
    links: [link('footing', 'wall')],
    ...part,
  });
  const planner = Planner.of(input);
  return { scale, input, planner: () => planner };
}

const tried = {
  phaseId: 'footing',
  way: 'notBefore',
  at: at('2031-01-07T12:00:00Z'),
  crewId: null,
} as const;

describe('a preview of a move', () => {
  it('says where the phase lands, what follows it, which ends change and which promises move', () => {
    const preview = previewMove(planned(), board, tried);
    expect(preview?.lands).toEqual({
      from: at('2031-01-07T12:00:00Z'),
      to: at('2031-01-07T20:00:00Z'),
      crewId: 'masons',
    });
    expect([...(preview?.places.keys() ?? [])].sort()).toEqual(['footing', 'step', 'wall']);
    expect(preview?.places.get('wall')?.from).toBe(at('2031-01-08T12:00:00Z'));
    expect(preview?.places.get('step')?.from).toBe(at('2031-01-06T12:00:00Z'));
    expect(preview?.ends.map(({ name, after, dueMissed }) => [name, after, dueMissed])).toEqual([
      ['101 Landing', at('2031-01-08T20:00:00Z'), true],
      ['102 Steps', at('2031-01-06T20:00:00Z'), false],
    ]);
    expect(preview?.broken).toEqual([{ phaseId: 'wall', name: '101 wall', crew: 'First masons' }]);
    expect(preview?.conflicts).toEqual([]);
  });

  it('says what a fixed start comes up against', () => {
    const early = { ...tried, phaseId: 'wall', way: 'fixed', at: at('2031-01-06T13:00:00Z') } as const;
    const preview = previewMove(planned(), board, early);
    expect(preview?.conflicts).toContain('101 wall would start before the work it waits for is done.');
  });

  it('is none when the phase is no longer planned, or has begun', () => {
    expect(previewMove(planned(), board, { ...tried, phaseId: 'gone' })).toBeNull();
    const begun = planned({
      phases: [work('footing', 32, { facts: { actualStart: slot(28), crewId: 'masons' } })],
      links: [],
    });
    expect(previewMove(begun, board, tried)).toBeNull();
  });

  it('is read out in a sentence or two', () => {
    const preview = previewMove(planned(), board, tried);
    if (!preview) throw new Error('there must be a preview');
    expect(previewWords(preview, '101 footing', ZONE)).toBe(
      '101 footing no earlier than Tue 7 Jan 07:00. It would start Tue 7 Jan 07:00. 3 phases move, 2 ends change, 1 promise moves.',
    );
    const still = previewMove(planned(), board, { ...tried, at: at('2031-01-06T12:00:00Z') });
    if (!still) throw new Error('there must be a preview');
    expect(previewWords(still, '101 footing', ZONE)).toMatch(/Nothing moves\.$/);
  });
});
