import { describe, expect, test } from '@jest/globals';
import { behindMostLag, explain } from './explain.js';
import type { Plan } from './model.js';
import { plan } from './plan.js';
import { slot } from './slot.js';
import { cure, inputWith, link, pour, work, workdays } from './spec-input.js';

const chain = (made: Plan, id: string): string[] =>
  explain(made, id).map(({ phaseId, inspectionId, reason }) => `${phaseId ?? inspectionId}: ${reason.kind}`);

const jobs = [
  { id: 'job', priority: 0 },
  { id: 'later', priority: 1 },
];

test('goes from stone over bed and a busy crew back to today', () => {
  const made = plan(
    inputWith({
      jobs,
      phases: [work('wall', 40), work('bed', 8, { jobId: 'later' }), work('stone', 8, { jobId: 'later' })],
      links: [link('bed', 'stone')],
    }),
  );
  expect(chain(made, 'stone')).toEqual(['stone: link', 'bed: crew', 'wall: calendar', 'wall: now']);
});

test('goes through the equipment to what gives it back', () => {
  const made = plan(
    inputWith({
      jobs,
      crews: ['a', 'b'].map((id) => ({ id, trades: ['mason'], calendarId: 'workdays' })),
      pools: [{ id: 'blankets', quantity: 1 }],
      phases: [
        pour('slab', 4, { holds: [{ poolId: 'blankets', quantity: 1, untilPhaseId: 'cure' }] }),
        cure('cure', 200),
        pour('footing', 4, { jobId: 'later', holds: [{ poolId: 'blankets', quantity: 1 }] }),
      ],
      links: [link('slab', 'cure')],
    }),
  );
  expect(chain(made, 'footing')).toEqual(['footing: equipment', 'cure: link', 'slab: calendar', 'slab: now']);
});

test('goes through a visit to the work it waits for, or to its notice', () => {
  const inspected = (notice: number) =>
    plan(
      inputWith({
        calendars: [{ id: 'workdays', open: workdays(30) }],
        inspections: [
          {
            id: 'footing',
            jobId: 'job',
            after: ['form'],
            notice,
            noticeIn: 'elapsed',
            calendarId: 'workdays',
            visit: 2,
            state: { kind: 'open' },
          },
        ],
        phases: [
          work('form', 8),
          pour('pour', 4, { gates: [{ kind: 'inspection', inspectionId: 'footing' }] }),
        ],
        links: [link('form', 'pour')],
      }),
    );
  expect(chain(inspected(0), 'pour')).toEqual([
    'pour: inspection',
    'footing: phase',
    'form: calendar',
    'form: now',
  ]);
  expect(chain(inspected(300), 'pour')).toEqual(['pour: inspection', 'footing: notice']);
});

test('tells what came before the weather too', () => {
  const cause = { kind: 'called', holdId: 'wind', text: 'called by the foreman' } as const;
  const made = plan(
    inputWith({
      jobs,
      weather: [{ id: 'site', holds: [{ from: slot(120), to: slot(140), cause }] }],
      phases: [work('wall', 32), work('seal', 4, { jobId: 'later', weatherIds: ['site'] })],
    }),
  );
  expect(chain(made, 'seal')).toEqual(['seal: weather', 'seal: crew', 'wall: calendar', 'wall: now']);
});

test('ends at a date from outside and at a phase that has no place', () => {
  const gate = { kind: 'clearance', id: 'permit', earliest: slot(300) } as const;
  const made = plan(
    inputWith({
      phases: [
        work('dig', 4, { gates: [gate] }),
        work('lay', 4),
        work('wire', 4, { trade: 'electrician' }),
        work('end', 1),
      ],
      links: [link('dig', 'lay'), link('wire', 'end')],
    }),
  );
  expect(chain(made, 'lay')).toEqual(['lay: link', 'dig: clearance']);
  expect(chain(made, 'end')).toEqual(['end: unplanned', 'wire: unplanned']);
  expect(chain(made, 'nothing')).toEqual([]);
});

test('a plan that has been written down and read again is explained alike', () => {
  const made = plan(inputWith({ jobs, phases: [work('wall', 40), work('bed', 8, { jobId: 'later' })] }));
  const read = JSON.parse(JSON.stringify(made)) as Plan;
  expect(explain(read, 'bed')).toEqual(explain(made, 'bed'));
});

test('phases that hold each other in place end at the one a person has fixed', () => {
  const made = plan(
    inputWith({
      phases: [work('first', 4), work('pinned', 1, { facts: { pinnedStart: slot(28) } })],
      links: [link('first', 'pinned', 'SF')],
    }),
  );
  expect(chain(made, 'first').at(-1)).toBe('pinned: pin');
});

describe('a phase kept back for what must follow it soon', () => {
  const crew = (id: string) => ({ id, trades: [id], calendarId: 'workdays' });
  const soon = (from: string, to: string, mostLag: number) => ({ ...link(from, to), mostLag });
  const crews = ['mason', 'setter', 'helper'].map(crew);

  test('leads to the crew that keeps back the last of a row', () => {
    const made = plan(
      inputWith({
        jobs,
        crews,
        phases: [
          work('wall', 70, { trade: 'setter' }),
          work('mix', 4, { jobId: 'later', trade: 'helper' }),
          work('bed', 4, { jobId: 'later' }),
          work('stone', 4, { jobId: 'later', trade: 'setter' }),
        ],
        links: [soon('mix', 'bed', 8), soon('bed', 'stone', 8)],
      }),
    );
    expect(chain(made, 'bed')).toEqual(['bed: mostLag', 'wall: calendar', 'wall: now']);
    expect(chain(made, 'mix')).toEqual(['mix: mostLag', 'wall: calendar', 'wall: now']);
  });

  test.each([
    ['what gives the equipment back', 'cure', ['cure: link', 'slab: calendar', 'slab: now']],
    ['who has the equipment', undefined, ['slab: calendar', 'slab: now']],
  ] as const)('leads to %s that keeps the other back', (_name, untilPhaseId, behind) => {
    const made = plan(
      inputWith({
        jobs,
        crews,
        pools: [{ id: 'mixer', quantity: 1 }],
        phases: [
          pour('slab', 20, { trade: 'setter', holds: [{ poolId: 'mixer', quantity: 1, untilPhaseId }] }),
          cure('cure', 4),
          work('mix', 4, { jobId: 'later', trade: 'helper' }),
          work('bed', 4, { jobId: 'later', holds: [{ poolId: 'mixer', quantity: 1 }] }),
        ],
        links: [link('slab', 'cure'), soon('mix', 'bed', 2)],
      }),
    );
    expect(chain(made, 'mix')).toEqual(['mix: mostLag', ...behind]);
  });

  test('goes on with its own waits where no phase kept the other back', () => {
    const gate = { kind: 'notBefore', id: 'hold', at: slot(40), cause: 'holdPoint' } as const;
    const made = plan(
      inputWith({
        crews,
        phases: [work('mix', 4, { trade: 'helper' }), work('bed', 4, { gates: [gate] })],
        links: [soon('mix', 'bed', 2)],
      }),
    );
    const [first] = explain(made, 'mix');
    expect(behindMostLag(first!.reason as never)).toBeNull();
    expect(chain(made, 'mix')).toEqual(['mix: mostLag', 'mix: now']);
  });

  test('and kept back by what follows itself, ends at the present and not in a circle', () => {
    /* Two short shifts to 25 slots: nothing but the way back round to the present is left when all have waited for each other. */
    const shifts = [0, 1, 2, 3, 4, 5, 6, 7].flatMap((n) => [
      { from: slot(25 * n + 5), to: slot(25 * n + 19) },
      { from: slot(25 * n + 20), to: slot(25 * n + 25) },
    ]);
    const made = plan(
      inputWith({
        now: slot(3),
        calendars: [{ id: 'workdays', open: shifts }],
        phases: ['spread', 'set', 'scrape'].map((id, i) => cure(id, [6, 26, 1][i]!, { crewId: 'masons' })),
        links: [
          link('spread', 'set'),
          { ...link('spread', 'scrape', 'SS'), mostLag: 24, mostLagIn: 'working' },
          { ...link('set', 'scrape', 'SF', -2, 'working'), mostLag: 27, mostLagIn: 'elapsed' },
        ],
      }),
    );
    expect(chain(made, 'spread')).toEqual(['spread: mostLag', 'set: mostLag', 'set: link', 'spread: now']);
  });
});

test('a visit put off for the pour that waits for it leads to what made the pour ready', () => {
  const cause = { kind: 'called', holdId: 'wind', text: 'called by the foreman' } as const;
  const made = plan(
    inputWith({
      weather: [{ id: 'site', holds: [{ from: slot(30), to: slot(96 * 3 + 30), cause }] }],
      inspections: [
        {
          id: 'footing',
          jobId: 'job',
          after: ['form'],
          notice: 0,
          noticeIn: 'elapsed',
          calendarId: 'workdays',
          visit: 2,
          validFor: 96,
          state: { kind: 'open' },
        },
      ],
      phases: [
        work('form', 8),
        pour('pour', 4, { weatherIds: ['site'], gates: [{ kind: 'inspection', inspectionId: 'footing' }] }),
      ],
      links: [link('form', 'pour')],
    }),
  );
  expect(chain(made, 'pour')).toEqual([
    'pour: weather',
    'pour: inspection',
    'footing: validity',
    'pour: link',
    'form: calendar',
    'form: now',
  ]);
});

test('phases that wait for each other through equipment end at the one that a person has fixed', () => {
  const crews = ['mason', 'setter', 'helper'].map((id) => ({ id, trades: [id], calendarId: 'workdays' }));
  const made = plan(
    inputWith({
      crews,
      pools: [{ id: 'mixer', quantity: 1 }],
      phases: [
        work('mix', 4, { holds: [{ poolId: 'mixer', quantity: 1 }] }),
        work('bed', 4, {
          trade: 'setter',
          facts: { pinnedStart: slot(28) },
          holds: [{ poolId: 'mixer', quantity: 1, untilPhaseId: 'clean' }],
        }),
        work('clean', 4, { trade: 'helper', commitment: { start: slot(46), finish: slot(50) } }),
      ],
      links: [link('mix', 'bed', 'FS'), link('mix', 'clean', 'SF')],
    }),
  );
  expect(chain(made, 'mix')).toEqual(['mix: equipment', 'clean: link', 'bed: pin']);
});
