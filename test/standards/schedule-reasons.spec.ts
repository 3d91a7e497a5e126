import { describe, expect, test } from '@jest/globals';
import fc from 'fast-check';
import { DaySheet } from '../../bench/replan/slot-by-slot/day-sheet.js';
import { Store } from '../../bench/replan/slot-by-slot/store.js';
import { tryCrews } from '../../bench/replan/slot-by-slot/try-slots.js';
import type { Link, Phase, PlanInput, PlannedPhase, Reason } from '../../shared/schedule/model.js';
import { Pass } from '../../shared/schedule/pass.js';
import { verify } from '../../shared/schedule/verify/verify.js';
import { slot } from '../../shared/schedule/slot.js';
import { arbitraryInput } from './schedule-arbitrary-input.js';

/*
 * Every reason is put to the test: it is taken out of the input, and a scheduler that tries slot after slot and shares nothing with the
 * engine looks whether the phase could then start earlier among what was placed before it.
 */

/** fast-check prints the seed and the shrunken input of a failure; set FC_SEED to replay it. */
const seed = process.env['FC_SEED'];
const runs = (numRuns: number) => ({ numRuns, ...(seed === undefined ? {} : { seed: Number(seed) }) });

/** What the judge knows: no visits, no facts. */
const plain = arbitraryInput({ cycles: false, facts: false }).map((input): PlanInput => ({
  ...input,
  inspections: [],
  phases: input.phases.map((phase) => ({
    ...phase,
    gates: (phase.gates ?? []).filter(({ kind }) => kind !== 'inspection'),
  })),
}));

/** The input without some causes, for one phase. */
function without(
  input: PlanInput,
  phase: Phase,
  causes: readonly Reason[],
): { input: PlanInput; phase: Phase } {
  let [changed, own] = [input, phase];
  for (const cause of causes) {
    if (cause.kind === 'link')
      changed = { ...changed, links: changed.links.filter(({ id }) => id !== cause.linkId) };
    if (cause.kind === 'clearance' || cause.kind === 'cure' || cause.kind === 'notBefore') {
      own = {
        ...own,
        gates: own.gates!.filter((gate) => gate.kind === 'inspection' || gate.id !== cause.id),
      };
    }
    if (cause.kind === 'weather') {
      const weather = changed.weather.map((set) => ({
        ...set,
        holds: set.holds.filter(
          (hold) =>
            set.id !== cause.weatherId ||
            hold.to !== cause.until ||
            JSON.stringify(hold.cause) !== JSON.stringify(cause.cause),
        ),
      }));
      changed = { ...changed, weather };
    }
    if (cause.kind === 'calendar') {
      // Open before the horizon as well: at its very beginning a milestone may lie at the end of that.
      const calendars = changed.calendars.map(({ id }) => ({
        id,
        open: [{ from: slot(-1), to: slot(input.horizon) }],
      }));
      changed = { ...changed, calendars };
    }
  }
  return { input: changed, phase: own };
}

/** Whether a phase finds an earlier start with some causes out of the way, tried slot by slot. */
function startsEarlier(
  input: PlanInput,
  planned: ReadonlyMap<string, PlannedPhase>,
  before: readonly string[],
  at: PlannedPhase,
  causes: readonly Reason[],
): boolean {
  const given = input.phases.find(({ id }) => id === at.id)!;
  const { input: changed, phase } = without(input, given, causes);
  const out = (kind: 'crew' | 'equipment', id: string): boolean =>
    causes.some((cause) => cause.kind === kind && cause.phaseId === id);
  const busy = new Map(input.crews.map(({ id }) => [id, new Uint8Array(input.horizon)]));
  const store = new Store(changed);
  for (const id of before) {
    const place = planned.get(id)!;
    if (place.start === null || place.finish === null) continue;
    const one = input.phases.find((other) => other.id === id)!;
    if (place.crewId !== null && !out('crew', id)) busy.get(place.crewId)!.fill(1, place.start, place.finish);
    const placedFinish = (other: string): number | undefined =>
      before.includes(other) ? (planned.get(other)!.finish ?? undefined) : undefined;
    if (!out('equipment', id)) store.take(one, place.start, place.finish, placedFinish);
  }
  const linksTo = new Map(input.phases.map(({ id }) => [id, [] as Link[]]));
  for (const link of changed.links) linksTo.get(link.to)!.push(link);
  const standing = {
    input: changed,
    sheet: new DaySheet(changed),
    store,
    busy,
    linksTo,
    placeOf: (id: string) => {
      const { start, finish, crewId } = planned.get(id)!;
      return { start: start!, finish: finish!, crewId };
    },
  };
  const found = tryCrews(standing, phase, -Infinity);
  return 'start' in found && found.start < at.start!;
}

describe('the reasons of 1,000 plans', () => {
  test('add up from ready to start, and name what would let the phase start earlier, alone or together with all that is listed beside it', () => {
    let [judged, tied] = [0, 0];
    fc.assert(
      fc.property(plain, (input) => {
        const pass = new Pass(input);
        const ties = pass.ties();
        const planned = new Map(pass.plan.phases.map((phase) => [phase.id, phase]));
        for (const at of pass.plan.phases) {
          if (at.start === null) continue;
          let from = at.ready!;
          for (const step of at.trail) {
            expect([at.id, step.from]).toEqual([at.id, from]);
            expect(step.to).toBeGreaterThan(step.from);
            from = step.to;
          }
          expect([at.id, from]).toEqual([at.id, at.start]);
          const others = ties.get(at.id) ?? [];
          const all = [at.reason, ...others];
          if (all.at(-1)!.kind === 'now') continue;
          const before = pass.settled.slice(0, pass.settled.indexOf(at.id));
          judged++;
          // The judge looks at equipment until the phase's own finish only: of what is held longer it cannot say that nothing else binds.
          const longer = input.phases
            .find(({ id }) => id === at.id)!
            .holds!.some((hold) => hold.untilPhaseId !== undefined);
          if (others.length > 0 && !longer) {
            tied++;
            const alone = startsEarlier(input, planned, before, at, [at.reason]);
            expect([at.id, 'alone', alone]).toEqual([at.id, 'alone', false]);
          }
          const together = startsEarlier(input, planned, before, at, all);
          expect([at.id, all, together]).toEqual([at.id, all, true]);
        }
      }),
      runs(1000),
    );
    expect(judged).toBeGreaterThan(1500);
    expect(tied).toBeGreaterThan(30);
  });
});

test('waits add up for every phase of plans with facts, pins, visits and greatest lags', () => {
  fc.assert(
    fc.property(arbitraryInput({ cycles: true, facts: true, most: true }), (input) => {
      const { plan } = new Pass(input);
      expect(verify(input, plan)).toEqual([]);
      for (const { start, ready, trail } of plan.phases) {
        const waited = trail.reduce((sum, { from, to }) => sum + to - from, 0);
        if (start !== null) expect(ready! + waited).toBe(start);
      }
    }),
    runs(1000),
  );
});
