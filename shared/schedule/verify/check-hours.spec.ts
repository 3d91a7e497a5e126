import { describe, expect, test } from '@jest/globals';
import type { PlanInput } from '../model.js';
import { plan } from '../plan.js';
import { slot } from '../slot.js';
import { cure, inputWith, pour, work } from '../spec-input.js';
import { faults, silent, withPhase } from './broken-plan.js';

const segment = (from: number, to: number) => ({ from: slot(from), to: slot(to) });
const stretch = (from: number, to: number) => ({ start: slot(from), finish: slot(to) });

/** What is said of the hours of the one phase. */
function hours(
  input: PlanInput,
  at: { start: number; finish: number },
  ...parts: [number, number][]
): string[] {
  const segments = parts.map(([from, to]) => segment(from, to));
  const broken = withPhase(plan(input), 'it', { ...stretch(at.start, at.finish), segments });
  return faults(input, broken).filter((fault) => fault.startsWith('hours'));
}

describe('a milestone', () => {
  const input = inputWith({ phases: [work('it', 0, { trade: undefined, calendarId: 'workdays' })] });

  test('lies in open time or at the edge of it', () => {
    expect(hours(input, stretch(28, 28))).toEqual([]);
    expect(hours(input, stretch(60, 60))).toEqual([]);
    expect(hours(input, stretch(61, 61))).toEqual(['hours it: a milestone lies in closed time']);
  });

  test('has no length', () => {
    expect(hours(input, stretch(28, 29))).toEqual(['hours it: a milestone has a length']);
  });

  test('that a person has pinned to the night is told of', () => {
    const phases = input.phases.map((phase) => ({ ...phase, facts: { pinnedStart: slot(80) } }));
    const pinned = { ...input, phases };
    expect(plan(pinned).phases[0]!.start).toBe(80);
    expect(faults(pinned, plan(pinned))).toEqual([]);
    expect(faults(pinned, silent(plan(pinned)))).toContain('hours it: a milestone lies in closed time');
  });
});

describe('interruptible work', () => {
  const input = inputWith({ phases: [work('it', 8)] });

  test('has its full length', () => {
    expect(hours(input, stretch(28, 36), [28, 35])).toEqual(['hours it: 7 of 8 slots are planned']);
  });

  test('does not start in the night though it works by day', () => {
    expect(hours(input, stretch(20, 36), [28, 36])).toEqual(['hours it: it starts in closed time']);
  });

  test('does not rest while it could go on', () => {
    expect(hours(input, stretch(28, 40), [28, 32], [36, 40])).toEqual(['hours it: it rests in open time']);
  });

  test('has its stretches between start and finish, in order', () => {
    const wrong = 'hours it: its stretches are out of order';
    expect(hours(input, stretch(28, 36), [28, 36])).toEqual([]);
    expect(hours(input, stretch(30, 38), [28, 32], [34, 38])).toContain(wrong);
    expect(hours(input, stretch(28, 36), [30, 38])).toContain(wrong);
  });
});

describe('continuous work', () => {
  const input = inputWith({ phases: [pour('it', 8)] });

  test('is not interrupted', () => {
    const wrong = ['hours it: it is interrupted'];
    expect(hours(input, stretch(56, 128), [56, 60], [124, 128])).toEqual(wrong);
    expect(hours(input, stretch(28, 40), [28, 36])).toEqual(wrong);
  });

  test('does not run into the night', () => {
    expect(hours(input, stretch(56, 64), [56, 64])).toEqual(['hours it: it runs in a closed window']);
  });
});

describe('a wait by the clock', () => {
  const cause = { kind: 'called', holdId: 'frost', text: 'called by the foreman' } as const;
  const input = inputWith({
    weather: [{ id: 'site', holds: [{ ...segment(150, 160), cause }] }],
    phases: [cure('it', 40, { calendarId: 'workdays', weatherIds: ['site'] })],
  });

  test('goes on in the night, and does not start there', () => {
    expect(hours(input, stretch(50, 90), [50, 90])).toEqual([]);
    expect(hours(input, stretch(70, 110), [70, 110])).toEqual(['hours it: it starts in closed time']);
  });

  test('is not touched by closing weather', () => {
    expect(hours(input, stretch(124, 164), [124, 164])).toEqual(['hours it: closing weather touches it']);
  });
});
