import { DEFAULT_WEIGHTS, objectiveOf } from '../../shared/schedule/improve/objective.js';
import { seededRandom } from '../../shared/schedule/improve/random.js';
import type { Link, Phase, PlanInput } from '../../shared/schedule/model.js';
import { slot, type Slot } from '../../shared/schedule/slot.js';
import type { Dates } from './every-order.js';

/** A small case of everything at once: two jobs, two crews, one or two trades, hours, weather, lags (or leads as well), equipment. */
export function smallCase(seed: number, { leads = false } = {}): PlanInput {
  const random = seededRandom(seed);
  const draw = (below: number): number => Math.floor(random() * below);
  const stretches = (gap: number, length: number): { from: Slot; to: Slot }[] => {
    const list = [];
    for (let t = draw(gap); t < 90;) {
      const to = t + 1 + draw(length);
      list.push({ from: slot(t), to: slot(to) });
      t = to + 1 + draw(gap);
    }
    return list;
  };
  // Mostly up to five, now and then seven, so that all orders can be tried.
  const count = draw(10) === 0 ? 6 + draw(2) : 2 + draw(4);
  const phases = Array.from({ length: count }, (_, i): Phase => {
    const kind = draw(4);
    const slots = draw(12) === 0 ? 0 : 1 + draw(5);
    return {
      id: `p${i}`,
      jobId: `j${draw(2)}`,
      duration:
        kind === 0
          ? { kind: 'elapsed', slots }
          : { kind: 'work', slots, mode: kind === 1 ? 'continuous' : 'interruptible' },
      ...(kind === 0 ? {} : { trade: draw(3) === 0 ? 'cable' : 'mason' }),
      ...(draw(2) === 0 ? { weatherIds: ['site'] } : {}),
      ...(draw(3) === 0 ? { holds: [{ poolId: 'blankets', quantity: 1 + draw(2) }] } : {}),
    };
  });
  const links = phases.flatMap((_, i): Link[] =>
    phases.flatMap((_, j) =>
      j > i && draw(count) === 0
        ? [
            {
              id: `l${i}${j}`,
              from: `p${i}`,
              to: `p${j}`,
              kind: (['FS', 'FS', 'SS', 'FF', 'SF'] as const)[draw(5)]!,
              lag: leads ? 4 - draw(9) : draw(3) === 0 ? draw(6) : 0,
              lagIn: draw(2) === 0 ? 'working' : 'elapsed',
            },
          ]
        : [],
    ),
  );
  const frost = { kind: 'limit', limitId: 'air', value: 20, hour: slot(0), text: 'below 40 °F' } as const;
  return {
    horizon: 100,
    now: slot(draw(4)),
    freezeUntil: slot(0),
    calendars: [
      { id: 'early', open: stretches(3, 8) },
      { id: 'late', open: stretches(4, 9) },
    ],
    crews: [
      { id: 'a', trades: ['mason'], calendarId: 'early' },
      { id: 'b', trades: draw(2) === 0 ? ['mason', 'cable'] : ['cable'], calendarId: 'late' },
    ],
    pools: [{ id: 'blankets', quantity: 2 }],
    weather: [{ id: 'site', holds: stretches(12, 4).map((stretch) => ({ ...stretch, cause: frost })) }],
    inspections: [],
    jobs: [
      { id: 'j0', priority: draw(2), due: slot(20 + draw(40)) },
      { id: 'j1', priority: draw(2), ...(draw(2) === 0 ? { due: slot(20 + draw(40)) } : {}) },
    ],
    phases,
    links,
  };
}

/** The objective of dates that the judge placed. */
export function totalOf(input: PlanInput, dates: ReadonlyMap<string, Dates>): number {
  const phases = input.phases.map(({ id, jobId }) => {
    const { start, finish, crew } = dates.get(id)!;
    const state = start === null ? 'unplanned' : 'planned';
    return { id, jobId, state, start, finish, crewId: crew?.id ?? null };
  });
  const jobs = input.jobs.map(({ id, due }) => {
    const ends = phases.flatMap((phase) =>
      phase.jobId === id && phase.finish !== null ? [phase.finish] : [],
    );
    return { id, finish: ends.length === 0 ? null : Math.max(...ends), due: due ?? null, complete: true };
  });
  return objectiveOf(input, { phases, jobs } as unknown as Parameters<typeof objectiveOf>[1], DEFAULT_WEIGHTS)
    .total;
}
