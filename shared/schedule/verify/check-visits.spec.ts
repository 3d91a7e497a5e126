import { describe, expect, test } from '@jest/globals';
import type { Inspection, PlanInput } from '../model.js';
import { plan } from '../plan.js';
import { slot } from '../slot.js';
import { inputWith, work } from '../spec-input.js';
import { faults, withPhase, withVisits } from './broken-plan.js';

const visited = (part: Partial<Inspection>): PlanInput =>
  inputWith({
    inspections: [
      {
        id: 'footing',
        jobId: 'job',
        after: ['form'],
        notice: 0,
        noticeIn: 'elapsed',
        calendarId: 'workdays',
        visit: 4,
        state: { kind: 'open' },
        ...part,
      },
    ],
    phases: [work('form', 8)],
  });

const at = (from: number, to: number) => ({ start: slot(from), finish: slot(to) });

/** What is said of the visit when it is moved by hand. */
const found = (input: PlanInput, from: number, to: number): string[] =>
  faults(input, withVisits(plan(input), at(from, to)));

test('a visit before its work is done is found out, and so is one whose work has no place', () => {
  const input = visited({});
  expect(found(input, 36, 40)).toEqual([]);
  expect(found(input, 32, 36)).toEqual(['visit footing: comes before form is finished']);
  const nowhere = withPhase(plan(input), 'form', { start: null, finish: null });
  expect(faults(input, nowhere)).toContain('visit footing: comes before form is finished');
});

test('a visit in the night, or shorter than it takes, is found out', () => {
  const wrong = ['visit footing: is outside visiting hours'];
  expect(found(visited({}), 58, 62)).toEqual(wrong);
  expect(found(visited({}), 40, 42)).toEqual(wrong);
});

describe('a booked visit', () => {
  const input = visited({ state: { kind: 'booked', from: slot(130), to: slot(150) } });

  test('is where it is booked', () => {
    expect(plan(input).inspections).toMatchObject([{ state: 'booked', start: 130, finish: 150 }]);
    expect(faults(input, plan(input))).toEqual([]);
  });

  test('and found out when it is not, whether another time or no booking at all', () => {
    const wrong = ['visit footing: is not where it is booked'];
    expect(found(input, 130, 149)).toEqual(wrong);
    expect(found(input, 131, 150)).toEqual(wrong);
    const open = visited({});
    expect(faults(open, withVisits(plan(open), { state: 'booked' }))).toEqual(wrong);
  });
});

describe('a visit without its notice', () => {
  const wrong = ['visit footing: comes before its notice is over'];

  test('is found out by the clock', () => {
    const input = visited({ notice: 96 });
    expect(faults(input, plan(input))).toEqual([]);
    expect(found(input, 40, 44)).toEqual(wrong);
  });

  test('is found out in visiting hours', () => {
    const input = visited({ notice: 40, noticeIn: 'working' });
    expect(faults(input, plan(input))).toEqual([]);
    expect(found(input, 124, 128)).toEqual(wrong);
  });

  test('is none when it was asked for early enough', () => {
    const input = visited({ notice: 96, state: { kind: 'requested', at: slot(-60) } });
    expect(found(input, 40, 44)).toEqual([]);
  });
});

test('a visit that has been passed is asked for nothing', () => {
  const input = visited({ state: { kind: 'passed', at: slot(0) } });
  expect(faults(input, plan(input))).toEqual([]);
});
