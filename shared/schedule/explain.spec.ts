import { expect, test } from '@jest/globals';
import { explain } from './explain.js';
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
