import { describe, expect, test } from '@jest/globals';
import type { PlanInput } from '../model.js';
import { slot } from '../slot.js';
import { plainProject } from './plain-project.js';

const work = (slots: number) => ({ kind: 'work', slots, mode: 'continuous' }) as const;
const input: PlanInput = {
  horizon: 100,
  now: slot(0),
  freezeUntil: slot(0),
  calendars: [{ id: 'days', open: [] }],
  crews: [{ id: 'crew', trades: ['mason'], calendarId: 'days' }],
  pools: [
    { id: 'heater', quantity: 3 },
    { id: 'blanket', quantity: 5 },
  ],
  weather: [],
  inspections: [],
  jobs: [{ id: 'job', priority: 0 }],
  phases: [
    {
      id: 'b',
      jobId: 'job',
      duration: work(2),
      holds: [
        { poolId: 'heater', quantity: 1 },
        { poolId: 'heater', quantity: 1 },
      ],
    },
    {
      id: 'a',
      jobId: 'job',
      duration: { kind: 'elapsed', slots: 3 },
      holds: [{ poolId: 'blanket', quantity: 5 }],
    },
  ],
  links: [
    { id: 'l', from: 'a', to: 'b', kind: 'FS', lag: 0, lagIn: 'elapsed' },
    { id: 'm', from: 'a', to: 'b', kind: 'FS', lag: 0, lagIn: 'working' },
  ],
};

describe('a plain project', () => {
  test('is read from a job that needs nothing but equipment', () => {
    expect(plainProject(input)).toEqual({
      ids: ['a', 'b'],
      project: {
        durations: [3, 2],
        successors: [[1], []],
        demands: [
          [5, 0],
          [0, 2],
        ],
        capacities: [5, 3],
      },
    });
  });

  const first = input.phases[0]!;
  const changed: [string, Partial<PlanInput>][] = [
    ['the present is not the beginning', { now: slot(1) }],
    ['a job has a due date', { jobs: [{ id: 'job', priority: 0, due: slot(9) }] }],
    ['there are two jobs', { jobs: [...input.jobs, { id: 'other', priority: 0 }] }],
    ['a link has a lag', { links: [{ ...input.links[0]!, lag: 1 }] }],
    ['a link has a greatest lag', { links: [{ ...input.links[0]!, mostLag: 1 }] }],
    ['a link joins starts', { links: [{ ...input.links[0]!, kind: 'SS' }] }],
    ['a link leads to nothing', { links: [{ ...input.links[0]!, to: 'nothing' }] }],
    ['the horizon is tight', { horizon: 4 }],
    ['more is asked for than there is', { pools: [{ id: 'heater', quantity: 1 }, input.pools[1]!] }],
    ['a crew does it', { phases: [{ ...first, trade: 'mason' }, input.phases[1]!] }],
    ['a crew is named', { phases: [{ ...first, crewId: 'crew' }, input.phases[1]!] }],
    ['it has hours', { phases: [{ ...first, calendarId: 'days' }, input.phases[1]!] }],
    ['it is pinned', { phases: [{ ...first, facts: { pinnedStart: slot(4) } }, input.phases[1]!] }],
    [
      'it is promised',
      { phases: [{ ...first, commitment: { start: slot(1), finish: slot(3) } }, input.phases[1]!] },
    ],
    ['it stood somewhere', { phases: [{ ...first, previous: { start: slot(1) } }, input.phases[1]!] }],
    ['it has weather', { phases: [{ ...first, weatherIds: ['w'] }, input.phases[1]!] }],
    [
      'it has a gate',
      {
        phases: [
          { ...first, gates: [{ kind: 'notBefore', id: 'g', at: slot(2), cause: 'c' }] },
          input.phases[1]!,
        ],
      },
    ],
    [
      'equipment stays out',
      {
        phases: [
          { ...first, holds: [{ poolId: 'heater', quantity: 1, untilPhaseId: 'a' }] },
          input.phases[1]!,
        ],
      },
    ],
  ];
  test.each(changed)('is not one when %s', (_, change) => {
    expect(plainProject({ ...input, ...change })).toBeUndefined();
  });

  test('may ask for no equipment at all', () => {
    const bare = { ...input, phases: [{ id: 'a', jobId: 'job', duration: work(2) }], links: [] };
    expect(plainProject(bare)?.project.demands).toEqual([[0, 0]]);
    const empty = {
      ...input,
      phases: [{ ...bare.phases[0]!, weatherIds: [], gates: [], holds: [] }],
      links: [],
    };
    expect(plainProject(empty)).toEqual(plainProject(bare));
  });
});
