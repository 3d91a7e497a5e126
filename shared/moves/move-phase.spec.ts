import { describe, expect, it } from '@jest/globals';
import { applyChanges } from '../schedule/change.js';
import type { Phase, PlanInput } from '../schedule/model.js';
import { plan } from '../schedule/plan.js';
import { Planner } from '../schedule/planner.js';
import { slot } from '../schedule/slot.js';
import { inputWith, link, work } from '../schedule/spec-input.js';
import { verify } from '../schedule/verify/verify.js';
import { moveChanges, type PhaseMove } from './move-phase.js';

/* Days of 96 slots, open from slot 28 to 60; one mason crew. All dates are worked out by hand. */

const day = (d: number, from = 28) => slot(d * 96 + from);

/** Footing then wall of one job, and a step of another that waits for the crew. */
const input = (part: Partial<Record<'footing' | 'wall' | 'step', Partial<Phase>>> = {}): PlanInput =>
  inputWith({
    jobs: [
      { id: 'job', priority: 0 },
      { id: 'other', priority: 1 },
    ],
    phases: [
      work('footing', 32, { previous: { start: day(0) }, ...part.footing }),
      work('wall', 32, { previous: { start: day(1) }, ...part.wall }),
      work('step', 32, { jobId: 'other', previous: { start: day(2) }, ...part.step }),
    ],
    links: [link('footing', 'wall')],
  });

const startsAfter = (from: PlanInput, move: PhaseMove) => {
  const next = applyChanges(from, moveChanges(from, move));
  const made = plan(next);
  expect(verify(next, made)).toEqual([]);
  expect(Planner.of(from).preview(moveChanges(from, move))).toEqual(made);
  return Object.fromEntries(made.phases.map(({ id, start }) => [id, start]));
};

describe('a phase that is not to start before a slot', () => {
  it('starts at the first open slot from then on, and what waits for it follows', () => {
    const starts = startsAfter(input(), { phaseId: 'footing', way: 'notBefore', at: day(1, 10) });
    expect(starts).toEqual({ footing: day(1), wall: day(2), step: day(0) });
  });

  it('goes to an earlier place when it is free, and never before what it waits for', () => {
    const late = input({ wall: { gates: [{ kind: 'notBefore', id: 'w', at: day(5), cause: 'office' }] } });
    const starts = startsAfter(late, { phaseId: 'wall', way: 'notBefore', at: day(0) });
    expect(starts['wall']).toBe(day(1));
  });

  it('goes before other work of its crew that stood later', () => {
    const starts = startsAfter(input(), { phaseId: 'step', way: 'notBefore', at: slot(Number(day(1)) - 8) });
    expect(starts).toEqual({ footing: day(0), wall: day(2), step: day(1) });
  });

  it('lets its own promise go, inside the freeze window too, and keeps the promises of others', () => {
    const promised = {
      ...input({
        footing: { commitment: { start: day(0), finish: day(0, 60), crewId: 'masons' } },
        step: { commitment: { start: day(2), finish: day(2, 60), crewId: 'masons' } },
      }),
      freezeUntil: day(4),
    };
    const starts = startsAfter(promised, { phaseId: 'footing', way: 'notBefore', at: day(1) });
    expect(starts).toEqual({ footing: day(1), wall: day(3), step: day(2) });
  });

  it('takes the place of a start that was fixed, and of an earlier one that was set', () => {
    const pinned = input({ footing: { facts: { pinnedStart: day(4) } } });
    const first = { phaseId: 'footing', way: 'notBefore', at: day(2) } as const;
    expect(startsAfter(pinned, first)['footing']).toBe(day(2));
    const again = applyChanges(pinned, moveChanges(pinned, first));
    expect(startsAfter(again, { ...first, at: day(1) })['footing']).toBe(day(1));
  });
});

describe('a phase that is fixed', () => {
  it('starts then though others wanted the crew, which go round it', () => {
    const starts = startsAfter(input(), { phaseId: 'step', way: 'fixed', at: day(0) });
    expect(starts).toEqual({ footing: day(1), wall: day(2), step: day(0) });
  });

  it('is kept before its predecessor, which the plan says as a conflict', () => {
    const from = input();
    const made = plan(
      applyChanges(from, moveChanges(from, { phaseId: 'wall', way: 'fixed', at: slot(Number(day(0)) + 4) })),
    );
    expect(made.phases.find(({ id }) => id === 'wall')?.start).toBe(Number(day(0)) + 4);
    expect(made.conflicts.map(({ code }) => code)).toContain('pinBeforePredecessor');
  });

  it('may be given to another crew', () => {
    const from = {
      ...input(),
      crews: [
        { id: 'masons', trades: ['mason'], calendarId: 'workdays' },
        { id: 'others', trades: ['mason'], calendarId: 'workdays' },
      ],
    };
    const changes = moveChanges(from, { phaseId: 'step', way: 'fixed', at: day(0), crewId: 'others' });
    const made = plan(applyChanges(from, changes));
    expect(made.phases.map(({ id, start, crewId }) => [id, start, crewId])).toEqual([
      ['footing', day(0), 'masons'],
      ['step', day(0), 'others'],
      ['wall', day(1), 'masons'],
    ]);
  });
});

describe('what cannot be moved', () => {
  it('is a phase that is not planned, or that has begun', () => {
    const begun = input({ footing: { facts: { actualStart: day(0), crewId: 'masons' } } });
    const move = { way: 'notBefore', at: day(1) } as const;
    expect(() => moveChanges(begun, { ...move, phaseId: 'roof' })).toThrow(/no phase "roof"/);
    expect(() => moveChanges(begun, { ...move, phaseId: 'footing' })).toThrow(/has begun/);
  });
});
