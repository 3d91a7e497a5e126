import { describe, expect, test } from '@jest/globals';
import type { LinkKind, PlanInput } from '../model.js';
import { plan } from '../plan.js';
import { slot } from '../slot.js';
import { cure, inputWith, link, pour, work } from '../spec-input.js';
import { mirroredInput } from './mirrored-input.js';

/** Where everything is when it is pushed as late as its job's finish allows. */
function latest(input: PlanInput): Record<string, [number, number] | null> {
  const mirror = mirroredInput(input, plan(input));
  return Object.fromEntries(
    plan(mirror.input).phases.map(({ id, start, finish }) => [
      id,
      start === null ? null : [mirror.end - finish!, mirror.end - start],
    ]),
  );
}

const two = {
  jobs: [
    { id: 'job', priority: 0 },
    { id: 'other', priority: 1 },
  ],
};

describe('a plan seen from its end', () => {
  test('pushes what has room as late as hours allow and leaves what has none', () => {
    const phases = [work('long', 40), cure('wait', 5), cure('last', 4)];
    const links = [link('long', 'last'), link('wait', 'last')];
    // The mason works from 28 to 60 and from 124 on: 40 slots end at 132.
    expect(latest(inputWith({ phases, links }))).toEqual({
      long: [28, 132],
      wait: [127, 132],
      last: [132, 136],
    });
  });

  test('keeps a continuous pour inside one day when it is pushed', () => {
    const phases = [pour('pour', 20), work('long', 34), cure('last', 1)];
    const crews = [
      { id: 'masons', trades: ['mason'], calendarId: 'workdays' },
      { id: 'others', trades: ['mason'], calendarId: 'workdays' },
    ];
    const input = inputWith({ crews, phases, links: [link('pour', 'last'), link('long', 'last')] });
    // The second day has two slots before the end: too few, so the pour ends with the first day.
    expect(latest(input)['pour']).toEqual([40, 60]);
  });

  test('does not push a job behind its own finish', () => {
    const phases = [cure('a', 10), { ...cure('b', 3), jobId: 'other' }];
    expect(latest(inputWith({ ...two, phases }))).toEqual({ a: [0, 10], b: [0, 3] });
  });

  test.each<[LinkKind, number, [number, number]]>([
    ['FS', 2, [3, 8]],
    ['SS', 2, [8, 13]],
    ['FF', 2, [11, 16]],
    ['SF', 6, [12, 17]],
  ])('turns %s links round', (kind, lag, expected) => {
    // `b` is held at 10 to 18 by a pin; `a` may go as late as its link to `b` and the job's end, 30, allow.
    const pinned = { ...cure('b', 8), facts: { pinnedStart: slot(10) } };
    const input = inputWith({
      phases: [cure('a', 5), pinned, cure('c', 30)],
      links: [link('a', 'b', kind, lag)],
    });
    expect(latest(input)['b']).toEqual([10, 18]);
    expect(latest(input)['a']).toEqual(expected);
  });

  test('takes equipment that stays out from the one phase until the other is finished', () => {
    const phases = [
      cure('bed', 4, { holds: [{ poolId: 'blanket', quantity: 1, untilPhaseId: 'cured' }] }),
      cure('cured', 6),
      cure('rival', 3, { jobId: 'other', holds: [{ poolId: 'blanket', quantity: 1 }] }),
      cure('slow', 40, { jobId: 'other' }),
      cure('end', 20),
    ];
    const input = inputWith({
      ...two,
      pools: [{ id: 'blanket', quantity: 1 }],
      phases,
      links: [link('bed', 'cured')],
    });
    const { bed, cured, rival } = latest(input);
    expect(cured![0]).toBeGreaterThanOrEqual(bed![1]);
    expect(rival![0] >= cured![1] || rival![1] <= bed![0]).toBe(true);
  });

  test('leaves out what closes nothing and turns closing weather round', () => {
    const limit = { kind: 'called', holdId: 'x', text: 'x' } as const;
    const weather = [
      {
        id: 'site',
        holds: [
          { from: slot(20), to: slot(26), cause: limit },
          { from: slot(0), to: slot(90), cause: { kind: 'unknown' } as const },
          { from: slot(200), to: slot(210), cause: limit },
        ],
      },
    ];
    const phases = [
      cure('wet', 8),
      {
        ...cure('dry', 5),
        duration: { kind: 'work', slots: 5, mode: 'continuous' },
        weatherIds: ['site'],
      } as const,
      cure('all', 30),
    ];
    const input = inputWith({ weather, phases });
    expect(latest(input)).toEqual({ wet: [22, 30], dry: [15, 20], all: [0, 30] });
    expect(mirroredInput(input, plan(input)).input.weather[0]!.holds).toEqual([
      { from: 4, to: 10, cause: limit },
    ]);
  });

  test('keeps the time of a visit between the work it looks at and the work that waits for it', () => {
    const inspection = {
      id: 'visit',
      jobId: 'job',
      after: ['dug'],
      notice: 6,
      noticeIn: 'elapsed',
      calendarId: 'workdays',
      visit: 2,
    } as const;
    const gates = [
      { kind: 'inspection', inspectionId: 'visit' },
      { kind: 'notBefore', id: 'x', at: slot(0), cause: 'x' },
    ] as const;
    const phases = [cure('dug', 4), cure('cast', 3, { gates }), cure('all', 60)];
    const of = (state: PlanInput['inspections'][number]['state']): unknown =>
      latest(inputWith({ phases, inspections: [{ ...inspection, state }] }));
    expect(of({ kind: 'open' })).toEqual({ dug: [45, 49], cast: [57, 60], all: [0, 60] });
    expect(of({ kind: 'passed', at: slot(0) })).toEqual({ dug: [56, 60], cast: [57, 60], all: [0, 60] });
  });

  test('is about what is still to be done', () => {
    const phases = [
      { ...work('done', 4), facts: { actualStart: slot(0), actualFinish: slot(4) } },
      { ...work('begun', 4), facts: { actualStart: slot(28) } },
      work('next', 4, { previous: { start: slot(0) } }),
      cure('nobody', 4, { trade: 'roofer' }),
    ];
    const input = inputWith({
      ...two,
      now: slot(30),
      phases,
      links: [link('done', 'next'), link('begun', 'next')],
    });
    const { input: turned } = mirroredInput(input, plan(input));
    expect(turned.phases.map(({ id }) => id)).toEqual(['next']);
    expect(turned.links).toEqual([]);
    expect(mirroredInput(inputWith({}), plan(inputWith({})))).toMatchObject({
      end: 0,
      input: { horizon: 1 },
    });
  });
});
