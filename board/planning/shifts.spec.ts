import { describe, expect, test } from '@jest/globals';
import { Planner } from '../../shared/schedule/planner.js';
import { slot } from '../../shared/schedule/slot.js';
import { inputWith, work } from '../../shared/schedule/spec-input.js';
import { delay } from '../../shared/schedule/what-if/scenarios.js';
import { whatIf } from '../../shared/schedule/what-if/what-if.js';
import type { BoardData } from '../board/layout/rows.js';
import { shiftsAnswered, shiftsFound } from './shifts.js';

const board = { jobs: [{ id: 'j1', number: 101, name: 'Landing' }] } as unknown as BoardData;
/** Midnight in New York on the first day; days are open from 07:00 to 15:00. */
const scale = { startsAt: '2031-01-06T05:00:00Z', slotMinutes: 15 };

describe('what the engine finds in the page', () => {
  const planner = Planner.of(
    inputWith({
      jobs: [
        { id: 'j1', priority: 0, due: slot(60) },
        { id: 'j2', priority: 1 },
        { id: 'j3', priority: 2 },
      ],
      phases: [
        work('first', 16, { jobId: 'j1' }),
        work('second', 8, { jobId: 'j2' }),
        work('never', 4, { jobId: 'j3', trade: 'cable' }),
      ],
    }),
  );

  test('has every job with its ends as moments, and names those that the board shows', () => {
    const shifts = shiftsFound(whatIf(planner, delay('first', 20)), board, scale);
    // Eight hours a day: four of work and five more end an hour into the next day, two of the other job after them.
    expect(shifts).toEqual({
      moved: 2,
      conflictsCome: 1,
      conflictsGo: 0,
      words: [],
      jobs: [
        {
          key: 'j1',
          name: '101 Landing',
          before: Date.parse('2031-01-06T16:00:00Z'),
          after: Date.parse('2031-01-07T13:00:00Z'),
          laterMinutes: 21 * 60,
          dueMissed: true,
        },
        {
          key: 'j2',
          name: 'a job not shown',
          before: Date.parse('2031-01-06T18:00:00Z'),
          after: Date.parse('2031-01-07T15:00:00Z'),
          laterMinutes: 21 * 60,
          dueMissed: false,
        },
        {
          key: 'j3',
          name: 'a job not shown',
          before: null,
          after: null,
          laterMinutes: null,
          dueMissed: false,
        },
      ],
    });
  });

  test('calls a due date missed only where the change is what misses it', () => {
    const jobsDue = planner.input.jobs.map((job) => ({ ...job, due: slot(30) }));
    const late = Planner.of({ ...planner.input, jobs: jobsDue });
    const { jobs } = shiftsFound(whatIf(late, delay('first', 4)), board, scale);
    expect(jobs.map(({ dueMissed }) => dueMissed)).toEqual([false, false, false]);
  });
});

test('what the service answers becomes the same, with the conflicts in words', () => {
  expect(
    shiftsAnswered({
      __typename: 'Supposed',
      jobs: [
        {
          before: '2031-01-06T16:00:00Z',
          after: '2031-01-07T16:00:00Z',
          laterMinutes: 1440,
          dueMissedBefore: false,
          dueMissedAfter: true,
          job: { id: 'j1', number: 101, name: 'Landing' },
        },
        {
          before: null,
          after: null,
          laterMinutes: null,
          dueMissedBefore: false,
          dueMissedAfter: false,
          job: null,
        },
      ],
      phases: [{ startAfter: null }],
      conflictsAdded: [{ text: 'Landing misses its due date.' }],
      conflictsRemoved: [],
    }),
  ).toEqual({
    moved: 1,
    conflictsCome: 1,
    conflictsGo: 0,
    words: ['Landing misses its due date.'],
    jobs: [
      {
        key: 'j1',
        name: '101 Landing',
        before: Date.parse('2031-01-06T16:00:00Z'),
        after: Date.parse('2031-01-07T16:00:00Z'),
        laterMinutes: 1440,
        dueMissed: true,
      },
      {
        key: 'job 1',
        name: 'a job not shown',
        before: null,
        after: null,
        laterMinutes: null,
        dueMissed: false,
      },
    ],
  });
});
