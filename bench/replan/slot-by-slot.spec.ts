import { describe, expect, test } from '@jest/globals';
import { seededRandom } from '../../shared/schedule/improve/random.js';
import type { EquipmentHold, Gate, Interval, Link, Phase, PlanInput } from '../../shared/schedule/model.js';
import { plan } from '../../shared/schedule/plan.js';
import { slot } from '../../shared/schedule/slot.js';
import { cure, inputWith, link, pour, work } from '../../shared/schedule/spec-input.js';
import { portfolio } from '../portfolio/portfolio.js';
import { slotBySlot, type Dated } from './slot-by-slot/slot-by-slot.js';

function planned(input: PlanInput): Dated[] {
  return plan(input).phases.map(({ id, start, finish, crewId }) => ({ id, start, finish, crewId }));
}

/** The input as it comes after a plan of it: every placed phase remembers where it stood. */
function again(input: PlanInput): PlanInput {
  const stood = new Map(plan(input).phases.map((phase) => [phase.id, phase]));
  const phases = input.phases.map((phase): Phase => {
    const { start, crewId } = stood.get(phase.id)!;
    return start === null ? phase : { ...phase, previous: { start, crewId: crewId ?? undefined } };
  });
  return { ...input, phases };
}

/** A small portfolio drawn from a seed: tight pools, weather, links inside and across jobs, leads, gates, due dates, now and then an order. */
function drawn(seed: number): PlanInput {
  const random = seededRandom(seed);
  const draw = (below: number): number => Math.floor(random() * below);
  const one = <T>(list: readonly T[]): T => list[draw(list.length)]!;
  const horizon = 300 + draw(900);
  const stretches = (gap: number, length: number, until: number): Interval[] => {
    const list: Interval[] = [];
    for (let t = draw(gap); t < until;) {
      const to = t + 2 + draw(length);
      list.push({ from: slot(t), to: slot(to) });
      t = to + 1 + draw(gap);
    }
    return list;
  };
  const jobs = Array.from({ length: 1 + draw(12) }, (_, j) => ({
    id: `j${j}`,
    priority: draw(3),
    ...(draw(2) === 0 ? { due: slot(draw(horizon)) } : {}),
  }));
  const calendars = ['early', 'late', 'odd'].map((id) => ({ id, open: stretches(14, 24, horizon + 20) }));
  const crews = Array.from({ length: 1 + draw(4) }, (_, i) => ({
    id: `c${i}`,
    trades: i === 0 ? ['mason', 'cable'] : one([['mason'], ['cable'], ['mason', 'cable']]),
    calendarId: one(calendars).id,
  }));
  const pools = [0, 1].map((i) => ({ id: `e${i}`, quantity: 1 + draw(4) }));
  const weather = [0, 1, 2].map((i) => ({
    id: `w${i}`,
    holds: stretches(80, 20, horizon / 2).map((stretch) => ({
      ...stretch,
      cause:
        draw(5) === 0
          ? ({ kind: 'unknown' } as const)
          : ({ kind: 'limit', limitId: 'air', value: 30, hour: stretch.from, text: 'below 40 °F' } as const),
    })),
  }));
  const gate = (): Gate =>
    one<Gate>([
      { kind: 'notBefore', id: 'hold', at: slot(draw(horizon / 2)), cause: 'forecast' },
      { kind: 'clearance', id: 'permit', earliest: draw(3) === 0 ? null : slot(draw(horizon / 2)) },
      { kind: 'cure', id: 'footing', expected: draw(3) === 0 ? null : slot(draw(horizon / 2)) },
    ]);
  const phases: Phase[] = [];
  const links: Link[] = [];
  const join = (from: string, to: string): void => {
    const kind = one(['FS', 'FS', 'FS', 'SS', 'FF', 'SF'] as const);
    const lag = draw(3) === 0 ? draw(16) - 5 : 0;
    links.push({ id: `l${links.length}`, from, to, kind, lag, lagIn: one(['working', 'elapsed'] as const) });
  };
  for (const { id: jobId } of jobs) {
    const count = 1 + draw(6);
    for (let p = 0; p < count; p++) {
      const id = `${jobId}-${p}`;
      const kind = draw(4);
      const slots = draw(12) === 0 ? 0 : 1 + draw(kind === 1 ? 12 : 24);
      const later = phases.length > 0 && draw(5) === 0 ? one(phases).id : `${jobId}-${p + draw(count - p)}`;
      const hold: EquipmentHold = { poolId: one(pools).id, quantity: 1 + draw(3) };
      phases.push({
        id,
        jobId,
        duration:
          kind === 0
            ? { kind: 'elapsed', slots }
            : { kind: 'work', slots, mode: kind === 1 ? 'continuous' : 'interruptible' },
        ...(kind === 0 && draw(3) > 0 ? {} : { trade: one(['mason', 'mason', 'cable']) }),
        ...(draw(12) === 0 ? { crewId: one(crews).id } : {}),
        ...(draw(3) === 0 ? { calendarId: one(calendars).id } : {}),
        ...(draw(2) === 0 ? { weatherIds: draw(4) === 0 ? ['w0', 'w1'] : [one(weather).id] } : {}),
        ...(draw(3) === 0 ? { holds: [draw(4) === 0 ? hold : { ...hold, untilPhaseId: later }] } : {}),
        ...(draw(8) === 0 ? { gates: [gate(), gate()].slice(draw(2)) } : {}),
      });
      if (p > 0 && draw(5) > 0) join(`${jobId}-${p - 1}`, id);
      if (draw(12) === 0) join(one(phases.slice(0, -1).concat(phases[0]!)).id, id);
    }
  }
  return {
    horizon,
    now: slot(draw(30)),
    freezeUntil: slot(0),
    calendars,
    crews,
    pools,
    weather,
    inspections: [],
    jobs,
    phases,
    links: links.filter(({ from, to }) => from !== to),
    ...(draw(4) === 0 ? { order: phases.map(({ id }) => id).filter(() => draw(3) > 0) } : {}),
  };
}

describe('slot by slot', () => {
  test.each([1, 2, 5, 12])('dates the invented portfolio of %d jobs as the planning pass does', (jobs) => {
    const input = portfolio(jobs);
    expect(slotBySlot(input)).toEqual(planned(input));
    const next = again(input);
    expect(slotBySlot(next)).toEqual(planned(next));
  });

  test('agrees on 600 drawn portfolios, the first time and with a plan before them', () => {
    const differ: object[] = [];
    let placed = 0;
    let without = 0;
    for (let seed = 1; seed <= 600; seed++) {
      const first = drawn(seed);
      for (const [round, input] of [first, again(first)].entries()) {
        const engine = planned(input);
        const judged = slotBySlot(input);
        const at = engine.findIndex((one, i) => JSON.stringify(one) !== JSON.stringify(judged[i]));
        if (at >= 0) differ.push({ seed, round, engine: engine[at], judged: judged[at] });
        for (const { start } of judged)
          if (start === null) without++;
          else placed++;
      }
    }
    expect(differ).toEqual([]);
    expect(placed).toBeGreaterThan(10_000);
    expect(without).toBeGreaterThan(100);
  });

  test('takes equipment for the whole way to its return, after the shortage', () => {
    // Blankets for one pour: out from slot 28 to the end of the first cure, 28 + 8 + 96.
    const holds = (cureId: string) => [{ poolId: 'blankets', quantity: 1, untilPhaseId: cureId }];
    const input = inputWith({
      pools: [{ id: 'blankets', quantity: 1 }],
      phases: [
        pour('a', 8, { holds: holds('b') }),
        cure('b', 96),
        pour('c', 8, { holds: holds('d') }),
        cure('d', 96),
      ],
      links: [link('a', 'b'), link('c', 'd')],
    });
    expect(slotBySlot(input).map(({ start }) => start)).toEqual([28, 36, 132, 140]);
  });

  test('asks for the return of what is out without an end before it gives up', () => {
    // "x" is placed on the way to the return of what "y" holds, while its own return waits for "y"; "v" is dealt with before that return.
    const lent = (poolId: string, untilPhaseId: string) => ({
      holds: [{ poolId, quantity: 1, untilPhaseId }],
    });
    const input = inputWith({
      pools: ['heater', 'blankets'].map((id) => ({ id, quantity: 1 })),
      phases: [
        work('r', 4),
        work('v', 4, { holds: [{ poolId: 'heater', quantity: 1 }] }),
        work('x', 4, lent('heater', 'r')),
        work('y', 4, lent('blankets', 'z')),
        work('z', 4),
      ],
      links: [link('x', 'z'), link('y', 'r'), link('x', 'r')],
      order: ['y', 'v', 'x', 'r', 'z'],
    });
    expect(slotBySlot(input)).toEqual(planned(input));
    expect(slotBySlot(input).map(({ id, start }) => [id, start])).toEqual([
      ['r', 40],
      ['v', 44],
      ['x', 28],
      ['y', 36],
      ['z', 32],
    ]);
  });

  test('lets interruptible work run over the night and weather, and keeps the crew from other work', () => {
    // Day of 32 slots from 28; lost from 40 to 50: 22 slots on the first day, the other 10 from 124.
    const cause = { kind: 'called', holdId: 'h', text: '' } as const;
    const input = inputWith({
      weather: [{ id: 'site', holds: [{ from: slot(40), to: slot(50), cause }] }],
      phases: [work('a', 32, { weatherIds: ['site'] }), work('b', 4)],
    });
    expect(slotBySlot(input)).toEqual([
      { id: 'a', start: 28, finish: 134, crewId: 'masons' },
      { id: 'b', start: 134, finish: 138, crewId: 'masons' },
    ]);
  });

  test.each<[string, Partial<PlanInput>]>([
    ['facts of phase "a"', { phases: [work('a', 4, { facts: { pinnedStart: slot(30) } })] }],
    [
      'commitment of phase "a"',
      { phases: [work('a', 4, { commitment: { start: slot(30), finish: slot(34) } })] },
    ],
    ['free crew of "a"', { phases: [work('a', 4, { keepsCrew: false })] }],
    [
      'greatest lag of "a>bFS"',
      { phases: [work('a', 4), work('b', 4)], links: [{ ...link('a', 'b'), mostLag: 8 }] },
    ],
    [
      'inspection "footing"',
      {
        inspections: [
          {
            id: 'footing',
            jobId: 'job',
            after: [],
            notice: 0,
            noticeIn: 'elapsed',
            calendarId: 'workdays',
            visit: 2,
            state: { kind: 'open' },
          },
        ],
      },
    ],
    ['circles', { phases: [work('a', 4), work('b', 4)], links: [link('a', 'b'), link('b', 'a')] }],
  ])('refuses %s', (what, part) => {
    expect(() => slotBySlot(inputWith(part))).toThrow(what);
  });
});
