import { describe, expect, test } from '@jest/globals';
import type { Link, PlanInput, PlannedPhase } from './model.js';
import { plan } from './plan.js';
import { slot } from './slot.js';
import { cure, inputWith, link, work, workdays } from './spec-input.js';
import { verify } from './verify/verify.js';

function phaseOf(input: PlanInput, id: string): PlannedPhase {
  const made = plan(input);
  expect(verify(input, made)).toEqual([]);
  return made.phases.find((phase) => phase.id === id)!;
}

/* A day has 32 open slots, from 28 to 60; the free float is what a phase can slip before anything else has to. */

describe('the free float under a greatest lag', () => {
  const most = (one: Link, mostLag: number): Link => ({ ...one, mostLag });

  test('of work under way is how far its finish can slip', () => {
    const input = inputWith({
      now: slot(40),
      phases: [
        work('dig', 4, { facts: { actualStart: slot(28), actualFinish: slot(40), crewId: 'masons' } }),
        work('lay', 16, {
          facts: { actualStart: slot(28), remaining: 2 },
          trade: undefined,
          calendarId: 'workdays',
        }),
        cure('cure', 100),
      ],
      links: [most(link('dig', 'lay', 'FF'), 4)],
    });
    expect(phaseOf(input, 'lay')).toMatchObject({ finish: 42, freeFloat: 2 });
    const free = { ...input, links: [link('dig', 'lay', 'FF')] };
    expect(phaseOf(free, 'lay').freeFloat).toBe(18 + 16);
  });

  const milestone = (mostLag: number): PlanInput =>
    inputWith({
      calendars: [{ id: 'workdays', open: workdays(1) }],
      phases: [
        work('lay', 24),
        work('seen', 0, { trade: undefined, calendarId: 'workdays' }),
        cure('cure', 200),
      ],
      links: [most(link('lay', 'seen'), mostLag)],
    });

  test('of a milestone reaches to the very end of the day, not over the night', () => {
    expect(phaseOf(milestone(8), 'seen')).toMatchObject({ start: 52, freeFloat: 8 });
    expect(phaseOf(milestone(7), 'seen').freeFloat).toBe(7);
    expect(phaseOf(milestone(90), 'seen').freeFloat).toBe(8);
  });

  test('of work counts its own hours and stops before the lag is overrun', () => {
    const input = inputWith({
      phases: [
        work('mix', 8),
        work('lay', 4, { trade: undefined, calendarId: 'workdays' }),
        cure('cure', 300),
      ],
      links: [most(link('mix', 'lay'), 100)],
    });
    // From 36 to 136 by the clock: the rest of the day is 24 slots, and 12 of the next.
    expect(phaseOf(input, 'lay')).toMatchObject({ start: 36, freeFloat: 24 + 12 });
  });
});

describe('a lead in working time', () => {
  const led = (lead: number): PlanInput =>
    inputWith({
      horizon: 96 * 2,
      calendars: [{ id: 'workdays', open: workdays(2) }],
      phases: [
        work('dig', 8),
        work('lay', 8, { gates: [{ kind: 'notBefore', id: 'hold', at: slot(124), cause: 'holdPoint' }] }),
      ],
      links: [link('dig', 'lay', 'FS', -lead, 'working')],
    });

  test('lets what comes before finish so much later than the other starts', () => {
    // By 128, four slots into the second day: its eight begin at 56.
    expect(phaseOf(led(4), 'dig')).toMatchObject({ start: 28, totalFloat: 28 });
  });

  test('that reaches beyond the end of all hours leaves only the end of the job', () => {
    expect(phaseOf(led(40), 'dig')).toMatchObject({ start: 28, totalFloat: 32 });
  });
});
