import { describe, expect, test } from '@jest/globals';
import type { PlanInput } from '../model.js';
import { slot } from '../slot.js';
import { cure, inputWith, link, work } from '../spec-input.js';
import { risk } from './risk.js';
import type { RiskModel } from './risk-model.js';

const days = (d: number): number => 96 * d;
const alone: RiskModel = { durations: {}, companyShare: 0, jobShare: 0 };
const chain: PlanInput = inputWith({
  horizon: days(60),
  jobs: [{ id: 'job', priority: 0, due: slot(days(3)) }],
  phases: [cure('a', days(1)), cure('b', days(2))],
  links: [link('a', 'b')],
});
const estimate = (a: number, m: number, b: number) => ({
  optimistic: days(a),
  likely: days(m),
  pessimistic: days(b),
});
const uncertain: RiskModel = { ...alone, durations: { a: estimate(0.5, 1, 3), b: estimate(1, 2, 6) } };

describe('risk', () => {
  test('of nothing uncertain is the plan', () => {
    const { jobs, phases, samples } = risk(chain, alone, { seed: 1, samples: 5 });
    expect(samples).toBe(5);
    expect(jobs).toMatchObject([
      {
        jobId: 'job',
        planned: days(3),
        half: { at: days(3), low: days(3), high: days(3) },
        fourFifths: { at: days(3) },
        dueKept: { chance: 1 },
        causes: [{ source: 'durations', slots: 0, share: 0 }],
      },
    ]);
    expect(phases.map(({ critical }) => critical.chance)).toEqual([1, 1]);
    expect(phases.map(({ commitmentKept }) => commitmentKept)).toEqual([null, null]);
  });

  test('adds chains up: mean and spread of the finish are those of the sum', () => {
    const { jobs } = risk(chain, uncertain, { seed: 4, samples: 1500 });
    // Means (a + 4m + b)/6: 1.25 and 2.5 days; variances (μ − a)(b − μ)/7: 0.1875 and 0.75. The sum of the two betas is close to normal.
    const sd = Math.sqrt((0.75 * 1.75) / 7 + (1.5 * 3.5) / 7);
    const [job] = jobs;
    expect(Math.abs(job!.half.at! / 96 - 3.7)).toBeLessThan(0.15);
    const spread = (job!.fan[8]!.at! - job!.fan[0]!.at!) / 96;
    expect(Math.abs(spread - 2 * 1.2816 * sd)).toBeLessThan(0.25);
    expect(job!.half.low!).toBeLessThanOrEqual(job!.half.at!);
    expect(job!.half.high!).toBeGreaterThanOrEqual(job!.half.at!);
    expect(job!.fan.map(({ at }) => at)).toEqual([...job!.fan.map(({ at }) => at!)].sort((a, b) => a - b));
    expect(job!.dueKept!.low).toBeLessThan(job!.dueKept!.chance);
    expect(job!.causes[0]).toMatchObject({ source: 'durations', share: 1 });
    expect(Math.abs(job!.causes[0]!.slots / 96 - 0.75)).toBeLessThan(0.1);
  });

  test('of chains side by side is the later one: each is critical now and then, and the middle is later than either', () => {
    const twins = inputWith({ horizon: days(60), phases: [cure('a', days(2)), cure('b', days(2))] });
    const model = { ...alone, durations: { a: estimate(1, 2, 3), b: estimate(1, 2, 3) } };
    const { jobs, phases } = risk(twins, model, { seed: 2, samples: 800 });
    // Symmetric about 2 days each; the greater of two independent ones is above its median with chance 3/4.
    for (const { critical } of phases) expect(Math.abs(critical.chance - 0.5)).toBeLessThan(0.08);
    expect(jobs[0]!.half.at!).toBeGreaterThan(days(2.1));
    const common = risk(twins, { ...model, companyShare: 1 }, { seed: 2, samples: 800 });
    expect(Math.abs(common.jobs[0]!.half.at! - days(2))).toBeLessThan(days(0.08));
  });

  test('keeps what is common to a job apart from what is common to the company', () => {
    const two = inputWith({
      horizon: days(60),
      jobs: [
        { id: 'job', priority: 0 },
        { id: 'other', priority: 0 },
      ],
      phases: [cure('a', days(2)), cure('b', days(2)), cure('c', days(2), { jobId: 'other' })],
    });
    const model = {
      ...alone,
      jobShare: 1,
      durations: { a: estimate(1, 2, 3), b: estimate(1, 2, 3), c: estimate(1, 2, 3) },
    };
    const { phases } = risk(two, model, { seed: 2, samples: 200 });
    expect(phases.map(({ critical }) => critical.chance)).toEqual([1, 1, 1]);
  });

  const outdoors = inputWith({
    horizon: days(90),
    calendars: [
      {
        id: 'workdays',
        open: Array.from({ length: 90 }, (_, d) => ({ from: slot(days(d) + 28), to: slot(days(d) + 60) })),
      },
    ],
    weather: [{ id: 'site', holds: [] }],
    phases: [
      work('x', 32 * 4, {
        weatherIds: ['site'],
        commitment: { start: slot(28), finish: slot(days(3) + 60) },
      }),
      work('y', 32, { commitment: { start: slot(days(4) + 28), finish: slot(days(4) + 60) } }),
    ],
    links: [link('x', 'y')],
  });
  const wet: RiskModel = {
    ...alone,
    durations: { x: { optimistic: 32 * 3, likely: 32 * 4, pessimistic: 32 * 7 } },
    weather: {
      forecastUntil: slot(0),
      firstDay: slot(0),
      day: 96,
      errorPerDay: 0,
      beyond: { kind: 'chain', months: [{ lostAfterGood: 0.3, lostAfterLost: 0.5 }], monthOfDay: [0] },
    },
  };

  test('says how much each source of chance delays, and what is waited for', () => {
    const { jobs, phases } = risk(outdoors, wet, { seed: 9, samples: 150 });
    const [durations, weather] = jobs[0]!.causes;
    expect([durations!.source, weather!.source]).toEqual(['durations', 'weather']);
    expect(weather!.slots).toBeGreaterThan(96);
    expect(durations!.slots).toBeGreaterThan(0);
    expect(durations!.share + weather!.share).toBeCloseTo(1, 12);
    expect(jobs[0]!.waits.map(({ kind }) => kind)).toContain('weather');
    expect(phases[0]!.commitmentKept!.chance).toBeLessThan(1);
    expect(phases[1]!.commitmentKept!.chance).toBeLessThan(phases[0]!.commitmentKept!.chance);
  });

  test('of a year that has been is that year: five lost days put the work off by five', () => {
    const lost = [[{ from: slot(0), to: slot(days(5)) }]];
    const weather = { ...wet.weather!, beyond: { kind: 'years' as const, years: lost } };
    const { jobs } = risk(outdoors, { ...alone, weather }, { seed: 9, samples: 5 });
    expect(jobs[0]).toMatchObject({ planned: days(4) + 60, half: { at: days(9) + 60 } });
    expect(jobs[0]!.causes).toMatchObject([
      { source: 'durations', slots: 0 },
      { source: 'weather', slots: days(5), share: 1 },
    ]);
  });

  test('shares its chance: a change is compared day by day, not luck by luck', () => {
    const plain = risk(outdoors, wet, { seed: 9, samples: 40 });
    expect(risk(outdoors, wet, { seed: 9, samples: 40 })).toEqual(plain);
    const longer = { ...outdoors, phases: [outdoors.phases[0]!, work('y', 64)] };
    const more = risk(longer, wet, { seed: 9, samples: 40 });
    for (const [i, { at }] of more.jobs[0]!.fan.entries()) expect(at! - plain.jobs[0]!.fan[i]!.at!).toBe(96);
    expect(risk(outdoors, wet, { seed: 10, samples: 40 })).not.toEqual(plain);
  });

  test('of what has happened is none, and of what has begun is in what is left', () => {
    const facts = inputWith({
      horizon: days(60),
      phases: [
        cure('a', days(1), { facts: { actualStart: slot(0), actualFinish: slot(5) } }),
        cure('b', days(2), { facts: { actualStart: slot(0), remaining: days(1) } }),
      ],
    });
    const { jobs } = risk(
      facts,
      { ...uncertain, durations: { a: estimate(1, 2, 6), b: estimate(1, 2, 6) } },
      { seed: 1, samples: 60 },
    );
    expect(jobs[0]!.fan[0]!.at!).toBeGreaterThanOrEqual(days(0.5));
    expect(jobs[0]!.fan[8]!.at!).toBeLessThanOrEqual(days(3));
  });

  test('of a job that cannot be placed has no date', () => {
    const never = inputWith({ phases: [work('x', 4, { trade: 'cable' })] });
    expect(risk(never, alone, { seed: 1, samples: 3 }).jobs[0]).toMatchObject({
      planned: null,
      half: { at: null },
    });
  });

  test('of what can be placed is told though some of it cannot', () => {
    const phases = [
      work('lay', 8),
      work('wire', 4, { trade: 'cable' }),
      work('seal', 4, { trade: 'cable' }),
      cure('cure', 96),
    ];
    const half = inputWith({ horizon: days(60), phases, links: [link('lay', 'cure')] });
    const told = risk(half, { ...alone, durations: { cure: estimate(1, 1, 2) } }, { seed: 1, samples: 20 });
    expect(told.jobs).toMatchObject([{ half: { at: null }, causes: [{ slots: 0 }] }]);
    expect(told.phases.map(({ phaseId, critical }) => [phaseId, critical.chance])).toEqual([
      ['cure', 1],
      ['lay', 1],
      ['seal', 0],
      ['wire', 0],
    ]);
  });

  test('lists what is waited for longest first, and of equal waits by name', () => {
    const cause = { kind: 'called', holdId: 'wind', text: 'called by the foreman' } as const;
    const waits = (until: number) => {
      const given = inputWith({
        horizon: days(60),
        weather: [{ id: 'site', holds: [{ from: slot(0), to: slot(until), cause }] }],
        phases: [work('x', 4, { weatherIds: ['site'] })],
      });
      return risk(given, alone, { seed: 1, samples: 2 }).jobs[0]!.waits.map(({ kind, slots }) => [
        kind,
        slots,
      ]);
    };
    expect(waits(56)).toEqual([
      ['calendar', 28],
      ['weather', 28],
    ]);
    expect(waits(57)).toEqual([
      ['weather', 29],
      ['calendar', 28],
    ]);
  });

  test('stops when it is told to, and says how far it is', () => {
    const seen: number[] = [];
    const { samples } = risk(chain, uncertain, {
      seed: 1,
      samples: 50,
      stop: () => seen.length >= 3,
      onProgress: (n) => seen.push(n),
    });
    expect([samples, seen]).toEqual([3, [1, 2, 3]]);
  });

  const bad: [string, () => unknown][] = [
    ['at least one sample', () => risk(chain, alone, { seed: 1, samples: 0 })],
    [
      'together at most 1',
      () => risk(chain, { ...alone, companyShare: 0.7, jobShare: 0.4 }, { seed: 1, samples: 1 }),
    ],
    [
      'from optimistic over likely',
      () => risk(chain, { ...alone, durations: { a: estimate(2, 1, 3) } }, { seed: 1, samples: 1 }),
    ],
    [
      'Chances are from 0 to 1',
      () => risk(chain, { ...wet, weather: { ...wet.weather!, errorPerDay: 2 } }, { seed: 1, samples: 1 }),
    ],
    [
      'at least one slot',
      () => risk(chain, { ...wet, weather: { ...wet.weather!, day: 0 } }, { seed: 1, samples: 1 }),
    ],
    [
      'at least one year',
      () =>
        risk(
          chain,
          { ...wet, weather: { ...wet.weather!, beyond: { kind: 'years', years: [] } } },
          { seed: 1, samples: 1 },
        ),
    ],
    [
      'number of a month',
      () =>
        risk(
          chain,
          { ...wet, weather: { ...wet.weather!, beyond: { kind: 'chain', months: [], monthOfDay: [0] } } },
          { seed: 1, samples: 1 },
        ),
    ],
    [
      'number of a month',
      () =>
        risk(
          chain,
          {
            ...wet,
            weather: {
              ...wet.weather!,
              beyond: { kind: 'chain', months: [{ lostAfterGood: 0.1, lostAfterLost: 0.1 }], monthOfDay: [] },
            },
          },
          { seed: 1, samples: 1 },
        ),
    ],
  ];
  test.each(bad)('refuses what means nothing: %s', (what, run) => {
    expect(run).toThrow(what);
  });
});
