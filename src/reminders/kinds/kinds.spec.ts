import { describe, expect, test } from '@jest/globals';
import {
  factsOf,
  holdPoint,
  inspection,
  jobFacts,
  markOut,
  phaseFacts,
  placement,
} from '../../../test/support/reminder-facts.js';
import type { Proposal } from '../../generated/prisma/client.js';
import { reminderKinds } from '../reminder-kinds.js';
import { cureReleasePredicted } from './cure-release-predicted.js';
import { equipmentDueTomorrow } from './equipment-due-tomorrow.js';
import { holdPointPending } from './hold-point-pending.js';
import { inspectionToRequest } from './inspection-to-request.js';
import { markOutLapsing } from './mark-out-lapsing.js';
import { proposalWaiting } from './proposal-waiting.js';
import { readingDue } from './reading-due.js';
import { visitToday } from './visit-today.js';

const at = (iso: string) => new Date(`${iso}-05:00`);

describe('an inspection to be requested', () => {
  const facts = jobFacts({ phases: [phaseFacts()], inspections: [inspection()] });

  test('is due on the morning before the latest request and useful until the planned visit', () => {
    const [one] = inspectionToRequest.derive(factsOf(facts));
    expect(one).toMatchObject({
      subjectType: 'inspection',
      subjectId: 'i',
      jobId: 'j',
      dueAt: at('2031-01-05T07:00:00'),
      usefulUntil: at('2031-01-08T10:00:00'),
    });
    expect(one?.detail.message.subject).toBe('Inspection to request: Footing, job 104, Birch Lane');
  });

  test('says which visit a re-inspection is', () => {
    const again = jobFacts({ ...facts, inspections: [inspection({ attempt: 2 })] });
    expect(inspectionToRequest.derive(factsOf(again))[0]?.detail.message.subject).toContain(
      'Footing (visit 2)',
    );
  });

  test.each([
    ['it was requested', { state: 'requested' as const }],
    ['it is booked', { state: 'booked' as const }],
    ['the plan has no visit for it', { planned: null }],
    ['its phase is done', { phaseId: 'gone' }],
  ])('is not wanted when %s', (_, changes) => {
    const other = jobFacts({ ...facts, inspections: [inspection(changes)] });
    expect(inspectionToRequest.derive(factsOf(other))).toEqual([]);
  });
});

describe('a visit today', () => {
  const booked = inspection({
    state: 'booked',
    visitFrom: at('2031-01-08T09:00:00'),
    visitTo: at('2031-01-08T12:00:00'),
  });

  test('is due at six on the day and useful until the end of the window', () => {
    const [one] = visitToday.derive(factsOf(jobFacts({ phases: [phaseFacts()], inspections: [booked] })));
    expect(one).toMatchObject({ dueAt: at('2031-01-08T06:00:00'), usefulUntil: at('2031-01-08T12:00:00') });
    expect(one?.detail.crewId).toBe('crew');
    expect(one?.detail.message.opening).toContain('cable waits for its result');
  });

  test('is wanted for a visit whose phase is done, and not for one that is not booked', () => {
    expect(visitToday.derive(factsOf(jobFacts({ inspections: [booked] })))).toHaveLength(1);
    expect(visitToday.derive(factsOf(jobFacts({ inspections: [inspection()] })))).toEqual([]);
  });
});

describe('a hold point pending before a finish', () => {
  const gate = holdPoint({ gate: 'finish', caution: 'Mind the edge.' });
  const derive = (...holdPoints: ReturnType<typeof holdPoint>[]) =>
    holdPointPending.derive(factsOf(jobFacts({ phases: [phaseFacts({ state: 'started', holdPoints })] })));

  test('is due four hours before the planned finish, one for all of the phase', () => {
    const wanted = derive(
      gate,
      holdPoint({ id: 'h2', gate: 'finish', title: 'Corners fit', state: 'refused' }),
    );
    expect(wanted).toHaveLength(1);
    expect(wanted[0]).toMatchObject({ subjectId: 'p', dueAt: at('2031-01-08T12:00:00') });
    expect(wanted[0]?.detail.message.lists[0]?.items).toEqual(['Corners fit', 'Depth measured']);
    expect(wanted[0]?.detail.message.cautions).toEqual(['Mind the edge.']);
  });

  test('is not wanted for gates of the start, decided ones, readings and cures', () => {
    expect(derive(holdPoint({ gate: 'start' }))).toEqual([]);
    expect(derive(holdPoint({ gate: 'finish', state: 'released' }))).toEqual([]);
    expect(derive(holdPoint({ gate: 'finish', state: 'waived' }))).toEqual([]);
    expect(derive(holdPoint({ gate: 'finish', kind: 'reading' }))).toEqual([]);
    expect(derive(holdPoint({ gate: 'finish', kind: 'cure' }))).toEqual([]);
  });

  test('is not wanted before the phase has started', () => {
    const waiting = jobFacts({ phases: [phaseFacts({ holdPoints: [gate] })] });
    expect(holdPointPending.derive(factsOf(waiting))).toEqual([]);
  });
});

describe('a mark-out about to lapse', () => {
  const dig = phaseFacts({ name: 'dig', holdPoints: [holdPoint({ kind: 'clearance', clearanceId: 'm' })] });

  test('is due three days before, while a phase relies on it, and warns against digging without', () => {
    const [one] = markOutLapsing.derive(factsOf(jobFacts({ phases: [dig], clearances: [markOut()] })));
    expect(one).toMatchObject({ dueAt: at('2031-01-07T07:00:00'), usefulUntil: at('2031-01-10T12:00:00') });
    expect(one?.detail.message.lists[0]?.items).toEqual(['dig']);
    expect(one?.detail.message.cautions).toEqual(['Do not dig without a mark-out that is valid on the day.']);
  });

  test.each([
    ['nothing relies on it any more', [], markOut()],
    ['it was not given yet', [dig], markOut({ state: 'requested' })],
    ['it does not lapse', [dig], markOut({ lapsesAt: null })],
    ['it is another clearance', [dig], markOut({ kind: 'permit' })],
  ])('is not wanted when %s', (_, phases, clearance) => {
    expect(markOutLapsing.derive(factsOf(jobFacts({ phases, clearances: [clearance] })))).toEqual([]);
  });
});

describe('equipment due tomorrow', () => {
  const holds = [
    { quantity: 12, pool: { name: 'Blankets', unit: 'pieces', kind: 'blanket' } },
    { quantity: 1, pool: { name: 'Heaters', unit: 'pieces', kind: 'heater' } },
  ] as never;

  test('is due at two on the afternoon before, one for all equipment of the phase', () => {
    const wanted = equipmentDueTomorrow.derive(factsOf(jobFacts({ phases: [phaseFacts({ holds })] })));
    expect(wanted).toHaveLength(1);
    expect(wanted[0]).toMatchObject({
      dueAt: at('2031-01-07T14:00:00'),
      usefulUntil: at('2031-01-08T08:00:00'),
    });
    expect(wanted[0]?.detail.message.lists[0]?.items).toEqual(['Blankets: 12 pieces', 'Heaters: 1 pieces']);
  });

  test('warns of carbon monoxide where heaters are among it, and only there', () => {
    const cautions = (list: never) =>
      equipmentDueTomorrow.derive(factsOf(jobFacts({ phases: [phaseFacts({ holds: list })] })))[0]?.detail
        .message.cautions;
    expect(cautions(holds)?.[0]).toContain('carbon monoxide');
    expect(cautions([(holds as unknown[])[0]] as never)).toEqual([]);
  });

  test('is not wanted once the phase has started, or while it has no date', () => {
    for (const changes of [{ state: 'started' as const }, { planned: null }, { holds: [] }]) {
      const facts = jobFacts({ phases: [phaseFacts({ holds, ...changes })] });
      expect(equipmentDueTomorrow.derive(factsOf(facts))).toEqual([]);
    }
  });
});

describe('a cure predicted to release', () => {
  const cure = phaseFacts({
    name: 'footing cure',
    holdPoints: [holdPoint({ kind: 'cure', placementPhaseId: 'pour' })],
  });

  test('is due at the predicted time in working hours and asks for a reading: the prediction releases nothing', () => {
    const [one] = cureReleasePredicted.derive(
      factsOf(jobFacts({ phases: [cure], placements: [placement()] })),
    );
    expect(one).toMatchObject({ subjectId: 'pl', dueAt: at('2031-01-08T09:00:00') });
    expect(one?.detail.message.opening).toContain('only measured readings');
    expect(one?.detail.message.cautions[0]).toContain('estimate from temperature');
  });

  test('waits for the morning when the time lies in the night', () => {
    const night = placement({ predictedReleaseAt: at('2031-01-08T23:00:00') });
    const [one] = cureReleasePredicted.derive(factsOf(jobFacts({ phases: [cure], placements: [night] })));
    expect(one?.dueAt).toEqual(at('2031-01-09T07:00:00'));
  });

  test('is not wanted without prediction, once released, or for a placement that was replaced', () => {
    const unpredicted = placement({ predictedReleaseAt: null });
    const later = placement({ id: 'pl2', placedAt: at('2031-01-07T09:00:00') });
    const released = phaseFacts({
      holdPoints: [holdPoint({ kind: 'cure', placementPhaseId: 'pour', state: 'released' })],
    });
    const derive = (facts: Parameters<typeof jobFacts>[0]) =>
      cureReleasePredicted.derive(factsOf(jobFacts(facts))).map(({ subjectId }) => subjectId);
    expect(derive({ phases: [cure], placements: [unpredicted] })).toEqual([]);
    expect(derive({ phases: [released], placements: [placement()] })).toEqual([]);
    expect(derive({ phases: [cure], placements: [placement(), later] })).toEqual(['pl2']);
  });
});

describe('a reading due', () => {
  const reading = (changes: Parameters<typeof holdPoint>[0] = {}) =>
    holdPoint({ kind: 'reading', title: 'Reading after laying', readingStage: 'laid', ...changes });
  const derive = (state: 'waiting' | 'started', ...holdPoints: ReturnType<typeof holdPoint>[]) =>
    readingDue.derive(factsOf(jobFacts({ phases: [phaseFacts({ state, holdPoints })] })));

  test('before a start is due on the morning of the planned start', () => {
    const [one] = derive('waiting', reading());
    expect(one).toMatchObject({ subjectType: 'holdPoint', subjectId: 'h', dueAt: at('2031-01-08T07:00:00') });
    expect(one?.detail.message.opening).toContain('cannot start before the reading is within limits');
    expect(one?.detail.message.cautions).toContain('Never energise the cable to test it.');
  });

  test('before a finish is wanted from the start of its phase', () => {
    expect(derive('waiting', reading({ gate: 'finish' }))).toEqual([]);
    expect(derive('started', reading({ gate: 'finish' }))[0]?.detail.message.opening).toContain(
      'cannot finish before',
    );
  });

  test('is not wanted once released, nor for other hold points', () => {
    expect(derive('waiting', reading({ state: 'released' }), holdPoint({ id: 'h2' }))).toEqual([]);
  });
});

describe('a proposal that waits', () => {
  const openProposal = {
    id: 'pr',
    companyId: 'c',
    number: 7,
    cause: 'inspection failed',
    createdAt: at('2031-01-06T09:00:00'),
    differences: [{}, {}],
  } as unknown as Proposal;

  test('is told in the next morning, once a day however often the plan moves, and belongs to no job', () => {
    expect(proposalWaiting.derive({ ...factsOf(), openProposal })).toMatchObject([
      { subjectId: 'c', jobId: null, dueAt: at('2031-01-07T07:00:00') },
    ]);
  });

  test('is not wanted while none is open', () => {
    expect(proposalWaiting.derive(factsOf())).toEqual([]);
  });
});

describe('every kind', () => {
  const facts = {
    ...factsOf(
      jobFacts({
        phases: [
          phaseFacts({
            state: 'started',
            holdPoints: [
              holdPoint({ gate: 'finish' }),
              holdPoint({ id: 'h2', kind: 'reading' }),
              holdPoint({ id: 'h3', kind: 'clearance', clearanceId: 'm' }),
              holdPoint({ id: 'h4', kind: 'cure', placementPhaseId: 'pour' }),
            ],
          }),
          phaseFacts({
            id: 'p2',
            holds: [{ quantity: 1, pool: { name: 'Mixer', unit: 'pieces', kind: 'mixer' } }] as never,
          }),
        ],
        inspections: [
          inspection(),
          inspection({
            id: 'i2',
            state: 'booked',
            visitFrom: at('2031-01-08T09:00:00'),
            visitTo: at('2031-01-08T12:00:00'),
          }),
        ],
        clearances: [markOut()],
        placements: [placement()],
      }),
    ),
    openProposal: {
      id: 'pr',
      number: 7,
      cause: 'x',
      createdAt: at('2031-01-06T09:00:00'),
      differences: [],
    } as unknown as Proposal,
  };

  test.each(reminderKinds.map((kind) => [kind.kind, kind] as const))(
    '%s gives one reminder here, stays useful past its due time, and is the same for the same facts',
    (_, { derive }) => {
      const wanted = derive(facts);
      expect(wanted).toHaveLength(1);
      expect(wanted[0]?.usefulUntil.getTime()).toBeGreaterThan(wanted[0]?.dueAt.getTime() ?? Infinity);
      expect(wanted[0]?.detail.message.subject).not.toBe('');
      expect(JSON.stringify(derive(facts))).toBe(JSON.stringify(wanted));
    },
  );
});
