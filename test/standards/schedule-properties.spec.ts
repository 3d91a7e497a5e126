import { describe, expect, test } from '@jest/globals';
import fc from 'fast-check';
import { explain } from '../../shared/schedule/explain.js';
import type { Interval, Phase, Plan, PlanInput, PlannedPhase } from '../../shared/schedule/model.js';
import { plan } from '../../shared/schedule/plan.js';
import { slot } from '../../shared/schedule/slot.js';
import { verify } from '../../shared/schedule/verify/verify.js';
import { arbitraryInput, shuffled } from './schedule-arbitrary-input.js';

const tame = arbitraryInput({ cycles: false, facts: false });
const lived = arbitraryInput({ cycles: false, facts: true });
const wild = arbitraryInput({ cycles: true, facts: true });
const limited = arbitraryInput({ cycles: false, facts: true, most: true });
const wildest = arbitraryInput({ cycles: true, facts: true, most: true });

/** fast-check prints the seed and the shrunken input of a failure; set FC_SEED to replay it. */
const seed = process.env['FC_SEED'];
const runs = (numRuns: number) => ({ numRuns, ...(seed === undefined ? {} : { seed: Number(seed) }) });

describe.each([
  ['without facts', tame],
  ['with facts, pins and commitments', lived],
  ['with cycles as well', wild],
  ['with greatest lags, visits that lapse and crews let go in a weather hold', limited],
  ['with all of it', wildest],
])('any input %s', (_name, inputs) => {
  test('the independent checker finds nothing', () => {
    fc.assert(
      fc.property(inputs, (input) => {
        expect(verify(input, plan(input))).toEqual([]);
      }),
      runs(300),
    );
  });

  test('gives the same plan, byte for byte, in whatever order its lists come', () => {
    fc.assert(
      fc.property(inputs, (input) => {
        const first = JSON.stringify(plan(input));
        expect(JSON.stringify(plan(input))).toBe(first);
        expect(JSON.stringify(plan(shuffled(input)))).toBe(first);
      }),
      runs(100),
    );
  });

  test('every reason leads back to the present, to a fact or to a date from outside', () => {
    const ends = ['now', 'actual', 'clearance', 'cure', 'notBefore', 'pin', 'commitment', 'unplanned'];
    const visitEnds = ['notice', 'hours', 'booked', 'passed'];
    fc.assert(
      fc.property(inputs, (input) => {
        const made = plan(input);
        for (const phase of made.phases) {
          const chain = explain(made, phase.id);
          const last = chain.at(-1)!;
          expect(last.inspectionId === null ? ends : [...visitEnds, 'unplanned']).toContain(last.reason.kind);
          expect(chain[0]!.reason).toEqual(phase.reason);
        }
      }),
      runs(100),
    );
  });
});

test('no phase has less free float than none or more than its total float', () => {
  fc.assert(
    fc.property(tame, (input) => {
      for (const { totalFloat, freeFloat } of plan(input).phases) {
        if (totalFloat === null || freeFloat === null) continue;
        expect(freeFloat).toBeGreaterThanOrEqual(0);
        expect(totalFloat).toBeGreaterThanOrEqual(freeFloat);
      }
    }),
    runs(400),
  );
});

test('a plan that is committed and planned again stays where it is, frozen or not', () => {
  fc.assert(
    fc.property(tame.map(released), fc.integer({ min: 0, max: 600 }), (input, freeze) => {
      const first = plan(input);
      const again = plan(committed(input, freeze));
      expect(again.conflicts.filter(({ code }) => code === 'commitmentBroken')).toEqual([]);
      for (const phase of first.phases) {
        const { start, finish } = again.phases.find(({ id }) => id === phase.id)!;
        if (phase.start !== null && phase.start < freeze)
          expect([phase.id, start]).toEqual([phase.id, phase.start]);
        if (freeze >= 600) expect([phase.id, start, finish]).toEqual([phase.id, phase.start, phase.finish]);
      }
    }),
    runs(300),
  );
});

test('no phase could start any earlier on any crew while all others stay: the last fifteen slots before it tried one by one', () => {
  fc.assert(
    fc.property(tame.map(released), (input) => {
      const made = plan(input);
      for (const at of made.phases) {
        if (at.start === null) continue;
        const phase = input.phases.find(({ id }) => id === at.id)!;
        for (const crewId of crewsFor(input, phase)) {
          for (let start = Math.max(input.now, at.start - 15); start < at.start; start++) {
            const earlier = placeAt(input, phase, at, crewId, start);
            const phases = made.phases.map((one) => (one.id === at.id ? earlier : one));
            const broken = verify(input, { ...made, phases }).filter(({ rule }) => rule !== 'dates');
            expect([at.id, start, crewId, broken.length > 0]).toEqual([at.id, start, crewId, true]);
          }
        }
      }
    }),
    runs(80),
  );
});

function crewsFor(input: PlanInput, phase: Phase): (string | null)[] {
  if (phase.duration.slots === 0 || (phase.trade ?? phase.crewId) === undefined) return [null];
  return input.crews
    .filter(({ id, trades }) => id === (phase.crewId ?? id) && (!phase.trade || trades.includes(phase.trade)))
    .map(({ id }) => id);
}

/** The phase at another start: its stretches are found by walking from slot to slot. */
function placeAt(
  input: PlanInput,
  phase: Phase,
  at: PlannedPhase,
  crewId: string | null,
  start: number,
): Plan['phases'][number] {
  const crew = input.crews.find(({ id }) => id === crewId);
  const calendarId = crew?.calendarId ?? phase.calendarId;
  const open = input.calendars.find(({ id }) => id === calendarId)?.open;
  const closed = input.weather
    .filter(({ id }) => phase.weatherIds?.includes(id))
    .flatMap(({ holds }) => holds.filter(({ cause }) => cause.kind !== 'unknown'));
  const within = (list: readonly Interval[], t: number) => list.some(({ from, to }) => from <= t && t < to);
  const { duration } = phase;
  const segments: Interval[] = [];
  let finish = start;
  for (let left = duration.slots; left > 0 && finish < input.horizon; finish++) {
    const runs = (!open || within(open, finish)) && !within(closed, finish);
    if (duration.kind === 'work' && duration.mode === 'interruptible' && !runs) continue;
    left--;
    const last = segments.at(-1);
    if (last && last.to === finish) segments[segments.length - 1] = { from: last.from, to: slot(finish + 1) };
    else segments.push({ from: slot(finish), to: slot(finish + 1) });
  }
  return { ...at, crewId, start: slot(start), finish: slot(finish), segments, ready: slot(start), trail: [] };
}

/** Keeps a hold until another phase where that phase follows the holder directly, as in any real job; else until its own finish. */
function released(input: PlanInput): PlanInput {
  const follows = new Set(
    input.links.filter(({ kind, lag }) => kind === 'FS' && lag >= 0).map(({ from, to }) => `${from}>${to}`),
  );
  const phases = input.phases.map((phase) => ({
    ...phase,
    holds: (phase.holds ?? []).map(({ poolId, quantity, untilPhaseId }) =>
      follows.has(`${phase.id}>${untilPhaseId}`) ? { poolId, quantity, untilPhaseId } : { poolId, quantity },
    ),
  }));
  return { ...input, phases };
}

function committed(input: PlanInput, freeze: number): PlanInput {
  const dates = new Map(plan(input).phases.map((phase) => [phase.id, phase]));
  const phases = input.phases.map((phase) => {
    const { start, finish, crewId } = dates.get(phase.id)!;
    if (start === null || finish === null) return phase;
    return { ...phase, commitment: { start, finish, ...(crewId === null ? {} : { crewId }) } };
  });
  return { ...input, freezeUntil: slot(freeze), phases };
}
