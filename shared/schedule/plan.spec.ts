import { describe, expect, test } from '@jest/globals';
import type { Phase, Plan, PlanInput, PlannedPhase } from './model.js';
import { plan } from './plan.js';
import { slot } from './slot.js';
import { cure, inputWith, link, pour, work, workdays } from './spec-input.js';
import { verify } from './verify/verify.js';

const DAY = 96;
/** 07:00 of a day. */
const morning = (day: number): number => day * DAY + 28;

function planned(input: PlanInput): Plan & { at: (id: string) => PlannedPhase } {
  const made = plan(input);
  expect(verify(input, made)).toEqual([]);
  return { ...made, at: (id) => made.phases.find((phase) => phase.id === id)! };
}

const codes = (made: Plan): string[] => made.conflicts.map((conflict) => conflict.code);

describe('hours', () => {
  test('interruptible work pauses overnight and says where it runs', () => {
    const made = planned(inputWith({ phases: [work('lay', 40)] }));
    expect(made.at('lay')).toMatchObject({
      start: morning(0),
      finish: morning(1) + 8,
      segments: [
        { from: morning(0), to: morning(0) + 32 },
        { from: morning(1), to: morning(1) + 8 },
      ],
      reason: { kind: 'calendar', calendarId: 'workdays', until: morning(0) },
    });
  });

  test('a pour that no longer fits today waits for tomorrow', () => {
    const made = planned(inputWith({ now: slot(morning(0) + 10), phases: [pour('pour', 30)] }));
    expect(made.at('pour')).toMatchObject({ start: morning(1), finish: morning(1) + 30 });
  });

  test('a pour longer than any day is a conflict, not an endless search', () => {
    const made = planned(inputWith({ phases: [pour('pour', 33)] }));
    expect(made.at('pour')).toMatchObject({ state: 'unplanned', start: null, finish: null });
    expect(made.conflicts).toEqual([{ code: 'noStretch', phaseId: 'pour', needed: 33, longest: 32 }]);
  });

  test('a cure runs by the clock, nights and weekends included', () => {
    const made = planned(
      inputWith({
        phases: [pour('pour', 32), cure('cure', DAY), work('block', 4)],
        links: [link('pour', 'cure'), link('cure', 'block')],
      }),
    );
    expect(made.at('cure')).toMatchObject({ start: morning(0) + 32, finish: morning(1) + 32 });
    expect(made.at('block')).toMatchObject({ start: morning(2), reason: { kind: 'link', phaseId: 'cure' } });
  });

  test('work that outruns the horizon is said to', () => {
    const made = planned(
      inputWith({
        horizon: DAY * 3,
        phases: [work('lay', 97), work('after', 1)],
        links: [link('lay', 'after')],
      }),
    );
    expect(made.conflicts).toMatchObject([
      { code: 'beyondHorizon', phaseId: 'lay', cause: { kind: 'calendar' } },
    ]);
    expect(made.at('after').reason).toEqual({
      kind: 'unplanned',
      code: 'predecessorUnplanned',
      phaseId: 'lay',
    });
    expect(made.jobs).toEqual([{ id: 'job', finish: null, complete: false, due: null }]);
  });
});

describe('links', () => {
  test('a working lag counts the hours of the crew that follows', () => {
    const made = planned(
      inputWith({
        phases: [work('lay', 30), work('seal', 2)],
        links: [link('lay', 'seal', 'FS', 10, 'working')],
      }),
    );
    expect(made.at('seal').start).toBe(morning(1) + 8);
  });

  test('a negative working lag reaches back over the night', () => {
    const made = planned(
      inputWith({
        crews: [
          { id: 'masons', trades: ['mason'], calendarId: 'workdays' },
          { id: 'more', trades: ['mason'], calendarId: 'workdays' },
        ],
        phases: [work('lay', 40), work('seal', 2)],
        links: [link('lay', 'seal', 'FS', -12, 'working')],
      }),
    );
    expect(made.at('seal').start).toBe(morning(0) + 28);
  });

  test('work that may only finish with another is begun as late as that needs, not stretched', () => {
    const made = planned(
      inputWith({
        crews: [
          { id: 'masons', trades: ['mason'], calendarId: 'workdays' },
          { id: 'more', trades: ['mason'], calendarId: 'workdays' },
        ],
        phases: [work('lay', 40), work('point', 12)],
        links: [link('lay', 'point', 'FF')],
      }),
    );
    expect(made.at('point')).toMatchObject({
      start: morning(0) + 28,
      finish: morning(1) + 8,
      reason: { kind: 'link', linkKind: 'FF' },
    });
  });

  test('a cycle is named in order and the rest is planned', () => {
    const made = planned(
      inputWith({
        phases: [work('a', 1), work('b', 1), work('c', 1), work('free', 1)],
        links: [link('a', 'b'), link('b', 'c'), link('c', 'a')],
      }),
    );
    expect(made.conflicts).toEqual([
      { code: 'cycle', phaseIds: ['a', 'b', 'c'], linkIds: ['a>bFS', 'b>cFS', 'c>aFS'] },
    ]);
    expect(made.at('free').state).toBe('planned');
    expect(made.at('b').state).toBe('unplanned');
  });
});

describe('crews', () => {
  const two = (extra: Partial<PlanInput>): PlanInput =>
    inputWith({
      jobs: [
        { id: 'job', priority: 0 },
        { id: 'later', priority: 1 },
      ],
      ...extra,
    });

  test('one crew does one phase at a time, the job of higher priority first', () => {
    const made = planned(two({ phases: [work('b', 8, { jobId: 'later' }), work('z', 8)] }));
    expect(made.at('z').start).toBe(morning(0));
    expect(made.at('b')).toMatchObject({
      start: morning(0) + 8,
      reason: { kind: 'crew', crewId: 'masons', phaseId: 'z', until: morning(0) + 8 },
    });
  });

  test('of two crews free at once the one it had stays', () => {
    const crews = ['a-crew', 'b-crew'].map((id) => ({ id, trades: ['mason'], calendarId: 'workdays' }));
    const fresh = planned(two({ crews, phases: [work('lay', 8)] }));
    expect(fresh.at('lay').crewId).toBe('a-crew');
    const kept = planned(
      two({ crews, phases: [work('lay', 8, { previous: { start: slot(0), crewId: 'b-crew' } })] }),
    );
    expect(kept.at('lay').crewId).toBe('b-crew');
  });

  test('a trade nobody has is a conflict', () => {
    const made = planned(inputWith({ phases: [work('wire', 4, { trade: 'electrician' })] }));
    expect(made.conflicts).toEqual([{ code: 'crewMissing', phaseId: 'wire', trade: 'electrician' }]);
  });

  test('the order of the plan before is kept, whatever the priority', () => {
    const made = planned(
      two({
        phases: [
          work('b', 8, { jobId: 'later', previous: { start: slot(5) } }),
          work('z', 8, { previous: { start: slot(50) } }),
        ],
      }),
    );
    expect(made.at('b').start).toBe(morning(0));
    expect(made.at('z').start).toBe(morning(0) + 8);
  });
});

describe('equipment', () => {
  const chain = (job: string, blankets: number): Phase[] => [
    pour(`${job}-pour`, 4, {
      jobId: job,
      holds: [{ poolId: 'blankets', quantity: blankets, untilPhaseId: `${job}-cure` }],
    }),
    cure(`${job}-cure`, 2 * DAY, { jobId: job }),
  ];
  const jobs = [
    { id: 'ash', priority: 0 },
    { id: 'oak', priority: 1 },
  ];

  test('blankets stay out until the cure is over, and the next pour waits for them', () => {
    const made = planned(
      inputWith({
        jobs,
        pools: [{ id: 'blankets', quantity: 10 }],
        phases: [...chain('ash', 6), ...chain('oak', 6)],
        links: [link('ash-pour', 'ash-cure'), link('oak-pour', 'oak-cure')],
      }),
    );
    expect(made.at('oak-pour')).toMatchObject({
      start: made.at('ash-cure').finish,
      reason: { kind: 'equipment', poolId: 'blankets', phaseId: 'ash-pour', releasedBy: 'ash-cure' },
    });
  });

  test('a pour of another job fits in before a later one that has the blankets, and only if they are back in time', () => {
    const before = (gap: number): Plan & { at: (id: string) => PlannedPhase } =>
      planned(
        inputWith({
          jobs,
          pools: [{ id: 'blankets', quantity: 6 }],
          phases: [
            {
              ...chain('ash', 6)[0]!,
              gates: [{ kind: 'notBefore', id: 'hold', at: slot(morning(gap)), cause: 'holdPoint' }],
            },
            chain('ash', 6)[1]!,
            ...chain('oak', 6),
          ],
          links: [link('ash-pour', 'ash-cure'), link('oak-pour', 'oak-cure')],
        }),
      );
    expect(before(3).at('oak-pour').start).toBe(morning(0));
    expect(before(2).at('oak-pour').start).toBe(before(2).at('ash-cure').finish);
  });

  test('more than the company owns is a conflict', () => {
    const made = planned(
      inputWith({
        jobs,
        pools: [{ id: 'blankets', quantity: 4 }],
        phases: chain('ash', 6),
        links: [link('ash-pour', 'ash-cure')],
      }),
    );
    expect(made.conflicts).toMatchObject([
      { code: 'poolTooSmall', phaseId: 'ash-pour', needed: 6, quantity: 4 },
    ]);
  });

  test('equipment whose return cannot be planned is not taken, so that other jobs are not starved', () => {
    const made = planned(
      inputWith({
        jobs,
        pools: [{ id: 'blankets', quantity: 6 }],
        phases: [
          ...chain('ash', 6),
          work('strip', 1, { jobId: 'ash', trade: 'nobody' }),
          ...chain('oak', 6),
        ].map((phase) =>
          phase.id === 'ash-pour'
            ? { ...phase, holds: [{ poolId: 'blankets', quantity: 6, untilPhaseId: 'strip' }] }
            : phase,
        ),
        links: [link('ash-pour', 'ash-cure'), link('ash-cure', 'strip'), link('oak-pour', 'oak-cure')],
      }),
    );
    expect(made.at('oak-pour').start).toBe(morning(0));
    expect(made.at('ash-pour').state).toBe('unplanned');
    expect(codes(made)).toContain('releaseMissing');
  });

  test('what started work has taken stays taken, even beyond the stock', () => {
    const facts = { actualStart: slot(0), actualFinish: slot(4), crewId: 'masons' };
    const made = planned(
      inputWith({
        now: slot(10),
        jobs,
        pools: [{ id: 'blankets', quantity: 10 }],
        phases: [...chain('ash', 6), ...chain('oak', 6)].map((phase) =>
          phase.id.endsWith('pour') ? { ...phase, facts } : phase,
        ),
        links: [link('ash-pour', 'ash-cure'), link('oak-pour', 'oak-cure')],
      }),
    );
    expect(made.conflicts).toEqual([
      {
        code: 'poolOverdrawn',
        poolId: 'blankets',
        phaseIds: ['ash-pour', 'oak-pour'],
        from: 0,
        to: 10 + 2 * DAY,
      },
    ]);
  });
});

describe('weather', () => {
  const cold = {
    kind: 'limit',
    limitId: 'air',
    value: 31,
    hour: slot(morning(0)),
    text: 'below 40 °F',
  } as const;
  const site = (...holds: [number, number][]) => [
    { id: 'site', holds: holds.map(([from, to]) => ({ from: slot(from), to: slot(to), cause: cold })) },
  ];

  test('a pour goes around a hold and names the limit, the value and the hour', () => {
    const made = planned(
      inputWith({
        weather: site([morning(0) + 8, morning(1) + 4]),
        phases: [pour('pour', 12, { weatherIds: ['site'] })],
      }),
    );
    expect(made.at('pour')).toMatchObject({
      start: morning(1) + 4,
      reason: { kind: 'weather', weatherId: 'site', until: morning(1) + 4, cause: cold },
    });
  });

  test('interruptible work pauses through a hold with its crew', () => {
    const made = planned(
      inputWith({
        weather: site([morning(0) + 8, morning(0) + 20]),
        phases: [work('lay', 12, { weatherIds: ['site'] }), work('other', 4)],
        links: [link('lay', 'other', 'SS')],
      }),
    );
    expect(made.at('lay').segments).toEqual([
      { from: morning(0), to: morning(0) + 8 },
      { from: morning(0) + 20, to: morning(0) + 24 },
    ]);
    expect(made.at('other').start).toBe(morning(0) + 24);
  });

  test('beyond the forecast it is planned and marked', () => {
    const unknown = {
      id: 'site',
      holds: [{ from: slot(DAY), to: slot(DAY * 30), cause: { kind: 'unknown' } as const }],
    };
    const made = planned(
      inputWith({
        weather: [unknown],
        phases: [work('lay', 40, { weatherIds: ['site'] }), work('first', 2, { weatherIds: ['site'] })],
        links: [link('first', 'lay')],
      }),
    );
    expect(made.at('lay').weatherUnknown).toBe(true);
    expect(made.at('first').weatherUnknown).toBe(false);
  });
});

describe('gates', () => {
  test('a clearance delays, an unknown one is assumed and marked, a lapsed one is a conflict', () => {
    const dig = (gate: object): Phase =>
      work('dig', 4, { gates: [{ kind: 'clearance', id: 'mark-out', ...gate } as never] });
    const late = planned(inputWith({ phases: [dig({ earliest: slot(morning(2)) })] }));
    expect(late.at('dig')).toMatchObject({
      start: morning(2),
      reason: { kind: 'clearance', id: 'mark-out' },
    });
    const unknown = planned(inputWith({ phases: [dig({ earliest: null })] }));
    expect(unknown.at('dig')).toMatchObject({ start: morning(0), assumes: ['mark-out'] });
    expect(codes(unknown)).toEqual(['gateUndated']);
    const lapsed = planned(
      inputWith({ now: slot(morning(3)), phases: [dig({ earliest: slot(0), expires: slot(morning(3)) })] }),
    );
    expect(lapsed.conflicts).toEqual([
      {
        code: 'clearanceLapsed',
        phaseId: 'dig',
        clearanceId: 'mark-out',
        expires: morning(3),
        start: morning(3),
      },
    ]);
  });

  const inspected = (state: object, extra: Partial<PlanInput> = {}): PlanInput =>
    inputWith({
      calendars: [
        { id: 'workdays', open: workdays(30) },
        {
          id: 'visits',
          open: workdays(30).map(({ from, to }) => ({ from: slot(from + 8), to: slot(to - 8) })),
        },
      ],
      inspections: [
        {
          id: 'footing',
          jobId: 'job',
          after: ['form'],
          notice: DAY,
          noticeIn: 'elapsed',
          calendarId: 'visits',
          visit: 4,
          state: state as never,
        },
      ],
      phases: [
        work('form', 28),
        pour('pour', 4, { gates: [{ kind: 'inspection', inspectionId: 'footing' }] }),
      ],
      links: [link('form', 'pour')],
      ...extra,
    });

  test('an inspection is placed in visiting hours after its work, with the last moment to ask for it', () => {
    const made = planned(inspected({ kind: 'open' }));
    expect(made.inspections).toMatchObject([
      {
        state: 'planned',
        ready: morning(0) + 28,
        start: morning(1) + 8,
        finish: morning(1) + 12,
        latestRequest: morning(0) + 8,
      },
    ]);
    expect(made.at('pour')).toMatchObject({
      start: morning(1) + 12,
      reason: { kind: 'inspection', inspectionId: 'footing' },
    });
  });

  test('a booked visit stands, unless the work will not be ready for it', () => {
    const booked = (day: number) => ({
      kind: 'booked',
      from: slot(morning(day) + 8),
      to: slot(morning(day) + 16),
    });
    const kept = planned(inspected(booked(3)));
    expect(kept.at('pour').start).toBe(morning(3) + 16);
    const early = planned(inspected(booked(0)));
    expect(early.conflicts).toEqual([
      { code: 'visitBeforeReady', inspectionId: 'footing', booked: morning(0) + 8, ready: morning(0) + 28 },
    ]);
    expect(early.at('pour').start).toBe(morning(1) + 12);
  });

  test('a passed inspection holds nothing back', () => {
    const made = planned(inspected({ kind: 'passed', at: slot(0) }));
    expect(made.at('pour').start).toBe(morning(0) + 28);
  });

  test('a predicted cure dates the plan and shows strength now and needed', () => {
    const gate = {
      kind: 'cure',
      id: 'footing',
      expected: slot(morning(4)),
      strengthNow: 900,
      strengthNeeded: 1500,
    } as const;
    const made = planned(inputWith({ phases: [work('block', 4, { gates: [gate] })] }));
    expect(made.at('block')).toMatchObject({
      start: morning(4),
      reason: { kind: 'cure', id: 'footing', at: morning(4), strengthNow: 900, strengthNeeded: 1500 },
    });
  });
});

describe('facts, pins and commitments', () => {
  test('started work goes on with what remains; nothing unstarted lies in the past', () => {
    const made = planned(
      inputWith({
        now: slot(morning(1) + 4),
        phases: [
          work('lay', 40, { facts: { actualStart: slot(morning(0)), crewId: 'masons', remaining: 6 } }),
          work('next', 2),
        ],
      }),
    );
    expect(made.at('lay')).toMatchObject({
      state: 'started',
      finish: morning(1) + 10,
      reason: { kind: 'actual' },
    });
    expect(made.at('next')).toMatchObject({
      start: morning(1) + 10,
      reason: { kind: 'crew', phaseId: 'lay' },
    });
  });

  test('without a figure what remains is the work less the open time since its start', () => {
    const made = planned(
      inputWith({
        now: slot(morning(1) + 4),
        phases: [work('lay', 40, { facts: { actualStart: slot(morning(0) + 10) } })],
      }),
    );
    expect(made.at('lay').finish).toBe(morning(1) + 18);
  });

  test('a frozen commitment stays though it could go earlier, and others go around it', () => {
    const made = planned(
      inputWith({
        freezeUntil: slot(morning(2)),
        phases: [
          work('lay', 16, {
            commitment: { start: slot(morning(1)), finish: slot(morning(1) + 16), crewId: 'masons' },
          }),
          work('big', 40),
        ],
      }),
    );
    expect(made.at('lay')).toMatchObject({
      start: morning(1),
      fixedBy: 'commitment',
      reason: { kind: 'commitment' },
    });
    expect(made.at('big').start).toBe(morning(1) + 16);
    expect(made.conflicts).toEqual([]);
  });

  test('a hard constraint breaks a commitment and is named', () => {
    const made = planned(
      inputWith({
        freezeUntil: slot(morning(2)),
        phases: [
          work('dig', 40, { trade: undefined, calendarId: 'workdays' }),
          work('lay', 8, {
            commitment: { start: slot(morning(1)), finish: slot(morning(1) + 8), crewId: 'masons' },
          }),
        ],
        links: [link('dig', 'lay')],
      }),
    );
    expect(made.conflicts).toMatchObject([
      {
        code: 'commitmentBroken',
        phaseId: 'lay',
        committed: morning(1),
        start: morning(1) + 8,
        cause: { kind: 'link', phaseId: 'dig' },
      },
    ]);
  });

  test('a commitment beyond the freeze window only keeps its turn', () => {
    const made = planned(
      inputWith({
        phases: [work('lay', 8, { commitment: { start: slot(morning(5)), finish: slot(morning(5) + 8) } })],
      }),
    );
    expect(made.at('lay')).toMatchObject({ start: morning(0), fixedBy: null });
  });

  const pinned = (at: number): Phase => work('lay', 8, { facts: { pinnedStart: slot(at) } });

  test('a pin is kept before its predecessor and in closed time, with a conflict', () => {
    const made = planned(
      inputWith({
        phases: [pinned(DAY - 4), work('dig', 40, { trade: undefined, calendarId: 'workdays' })],
        links: [link('dig', 'lay')],
      }),
    );
    expect(made.at('lay')).toMatchObject({
      start: DAY - 4,
      finish: morning(1) + 8,
      fixedBy: 'pin',
      reason: { kind: 'pin' },
    });
    expect(made.conflicts).toMatchObject([
      { code: 'pinBeforePredecessor', earliest: morning(1) + 8, cause: { kind: 'link', phaseId: 'dig' } },
      { code: 'pinInClosedTime', earliest: morning(1), cause: { kind: 'calendar' } },
    ]);
  });

  test('a pin gives way to the present', () => {
    const made = planned(inputWith({ now: slot(morning(1)), phases: [pinned(morning(0))] }));
    expect(made.at('lay')).toMatchObject({ start: morning(1), fixedBy: null });
    expect(codes(made)).toEqual(['pinMoved']);
  });

  test('a pin before a gate is kept and said', () => {
    const gate = { kind: 'notBefore', id: 'hold', at: slot(morning(3)), cause: 'forecast' } as const;
    const made = planned(inputWith({ phases: [{ ...pinned(morning(1)), gates: [gate] }] }));
    expect(made.at('lay').start).toBe(morning(1));
    expect(made.conflicts).toMatchObject([
      { code: 'pinBeforeGate', earliest: morning(3), cause: { kind: 'notBefore' } },
    ]);
  });

  test('a missed due date is a conflict', () => {
    const made = planned(
      inputWith({ jobs: [{ id: 'job', priority: 0, due: slot(20) }], phases: [work('lay', 8)] }),
    );
    expect(made.conflicts).toEqual([{ code: 'dueMissed', jobId: 'job', due: 20, finish: morning(0) + 8 }]);
  });

  test('facts that put one crew on two phases at once are kept and said', () => {
    const facts = { actualStart: slot(morning(0)), crewId: 'masons', remaining: 4 };
    const made = planned(
      inputWith({
        now: slot(morning(0) + 4),
        phases: [work('a', 8, { facts }), work('b', 8, { facts }), work('c', 1)],
      }),
    );
    expect(made.conflicts).toEqual([{ code: 'crewDoubled', crewId: 'masons', phaseIds: ['a', 'b'] }]);
    expect(made.at('c').start).toBe(morning(0) + 8);
  });
});

test('the trail tells every wait from ready to start, and they add up', () => {
  const cause = { kind: 'called', holdId: 'wind', text: 'called by the foreman' } as const;
  const made = planned(
    inputWith({
      jobs: [
        { id: 'job', priority: 0 },
        { id: 'later', priority: 1 },
      ],
      weather: [{ id: 'site', holds: [{ from: slot(morning(1)), to: slot(morning(1) + 6), cause }] }],
      phases: [work('a', 32), work('b', 4, { jobId: 'later', weatherIds: ['site'] })],
    }),
  );
  expect(made.at('b').ready).toBe(0);
  expect(made.at('b').trail.map(({ from, to, reason }) => [reason.kind, from, to])).toEqual([
    ['calendar', 0, morning(0)],
    ['crew', morning(0), morning(0) + 32],
    ['calendar', morning(0) + 32, morning(1)],
    ['weather', morning(1), morning(1) + 6],
  ]);
});

test('names that are not given are refused, all of them at once', () => {
  const broken = inputWith({
    phases: [work('a', 1, { jobId: 'gone', weatherIds: ['nowhere'] })],
    links: [link('a', 'missing')],
  });
  expect(() => plan(broken)).toThrow(/job "gone".*weather set "nowhere"|missing.*job "gone"/s);
  expect(() => plan(broken)).toThrow(/phase "missing"/);
});
