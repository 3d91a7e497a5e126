import fc from 'fast-check';
import type {
  EquipmentHold,
  Duration,
  Gate,
  Interval,
  Inspection,
  Link,
  Phase,
  PlanInput,
} from '../../shared/schedule/model.js';
import { slot } from '../../shared/schedule/slot.js';

/** How wild the generated inputs are. */
export interface Wildness {
  /** Links may run backwards and close cycles. */
  readonly cycles: boolean;
  /** Phases may have happened, be pinned or be committed. */
  readonly facts: boolean;
  /** Greatest lags, visits that lose their validity, crews let go in a weather hold. */
  readonly most?: boolean;
}

const HORIZON = 600;

const slots = (min: number, max: number) => fc.integer({ min, max });
const maybe = <T>(arbitrary: fc.Arbitrary<T>) => fc.option(arbitrary, { nil: undefined, freq: 2 });

/** Open stretches to the horizon's end from a short repeating list of breaks and lengths. */
const openTime: fc.Arbitrary<Interval[]> = fc
  .array(fc.tuple(slots(1, 8), slots(1, 14)), { minLength: 1, maxLength: 4 })
  .map((pattern) => {
    const open: Interval[] = [];
    for (let t = 0, i = 0; t < HORIZON; i++) {
      const [pause, length] = pattern[i % pattern.length]!;
      open.push({ from: slot(t + pause), to: slot(t + pause + length) });
      t += pause + length;
    }
    // A failure then prints the pattern, not hundreds of stretches.
    const value = () => `everyDay(${JSON.stringify(pattern)})`;
    return Object.defineProperty(open, fc.toStringMethod, { value });
  });

const weatherHold = fc
  .record({ from: slots(0, 200), length: slots(1, 25), unknown: fc.boolean() })
  .map((h) => ({
    from: slot(h.from),
    to: slot(h.from + h.length),
    cause: h.unknown
      ? ({ kind: 'unknown' } as const)
      : ({ kind: 'limit', limitId: 'air', value: 30, hour: slot(h.from), text: 'below 40 °F' } as const),
  }));

const duration: fc.Arbitrary<Duration> = fc.oneof(
  fc.record({ kind: fc.constant('work'), slots: slots(0, 12), mode: fc.constant('interruptible') }),
  fc.record({ kind: fc.constant('work'), slots: slots(0, 6), mode: fc.constant('continuous') }),
  fc.record({ kind: fc.constant('elapsed'), slots: slots(0, 30) }),
);

const gate = (inspections: number): fc.Arbitrary<Gate> =>
  fc.oneof(
    fc.record({
      kind: fc.constant('clearance' as const),
      id: fc.constantFrom('permit', 'mark-out'),
      earliest: fc.option(slots(0, 60).map(slot)),
      expires: maybe(slots(30, 200).map(slot)),
    }),
    fc.record({
      kind: fc.constant('cure' as const),
      id: fc.constant('footing'),
      expected: fc.option(slots(0, 60).map(slot)),
    }),
    fc.record({
      kind: fc.constant('notBefore' as const),
      id: fc.constant('hold'),
      at: slots(0, 60).map(slot),
      cause: fc.constant('forecast'),
    }),
    ...(inspections > 0
      ? [
          fc.record({
            kind: fc.constant('inspection' as const),
            inspectionId: slots(0, inspections - 1).map((i) => `i${i}`),
          }),
        ]
      : []),
  );

/** Whole planning inputs small enough to shrink and rich enough to meet every rule. */
export function arbitraryInput({ cycles, facts, most = false }: Wildness): fc.Arbitrary<PlanInput> {
  const sizes = fc.record({
    phases: slots(1, 12),
    jobs: slots(1, 3),
    crews: slots(1, 3),
    pools: slots(1, 2),
    inspections: slots(0, 2),
    now: slots(0, 30),
  });
  return sizes.chain((size) => {
    const id = (prefix: string, count: number) => slots(0, count - 1).map((i) => `${prefix}${i}`);
    const phase = fc.record({
      jobId: id('j', size.jobs),
      duration,
      trade: maybe(fc.constantFrom('mason', 'labour')),
      ...(most ? { keepsCrew: maybe(fc.boolean()) } : {}),
      crewId: fc.option(id('c', size.crews), { nil: undefined, freq: 9 }),
      calendarId: maybe(id('k', 3)),
      weatherIds: fc.uniqueArray(id('w', 2), { maxLength: 2 }),
      holds: fc.array(
        fc.record({
          poolId: id('e', size.pools),
          quantity: slots(1, 3),
          untilPhaseId: maybe(id('p', size.phases)),
        }),
        { maxLength: 1 },
      ),
      gates: fc.array(gate(size.inspections), { maxLength: 1 }),
      facts: facts
        ? fc.option(
            fc.oneof(
              fc.record({
                actualStart: slots(0, size.now).map(slot),
                remaining: maybe(slots(0, 9)),
                crewId: maybe(id('c', size.crews)),
              }),
              fc
                .tuple(slots(0, size.now), slots(0, size.now), maybe(id('c', size.crews)))
                .map(([a, b, crewId]) => ({
                  actualStart: slot(Math.min(a, b)),
                  actualFinish: slot(Math.max(a, b)),
                  crewId,
                })),
              fc.record({ pinnedStart: slots(0, 90).map(slot) }),
            ),
            { nil: undefined, freq: 3 },
          )
        : fc.constant(undefined),
      commitment: facts
        ? fc.option(
            fc
              .tuple(slots(0, 100), slots(0, 30), maybe(id('c', size.crews)))
              .map(([start, length, crewId]) => ({
                start: slot(start),
                finish: slot(start + length),
                crewId,
              })),
            { nil: undefined, freq: 3 },
          )
        : fc.constant(undefined),
    });
    const link = fc
      .record({
        a: slots(0, size.phases - 1),
        b: slots(0, size.phases - 1),
        kind: fc.constantFrom('FS' as const, 'FS' as const, 'SS' as const, 'FF' as const, 'SF' as const),
        lag: fc.oneof(fc.constant(0), slots(-8, 12)),
        lagIn: fc.constantFrom('working' as const, 'elapsed' as const),
        backwards: slots(0, 7),
        ...(most
          ? {
              mostLag: maybe(slots(0, 40)),
              mostLagIn: maybe(fc.constantFrom('working' as const, 'elapsed' as const)),
            }
          : {}),
      })
      .filter(({ a, b }) => a !== b)
      .map(({ a, b, backwards, ...rest }) => {
        const turned = cycles && backwards === 0;
        const [low, high] = [Math.min(a, b), Math.max(a, b)];
        return { from: `p${turned ? high : low}`, to: `p${turned ? low : high}`, ...rest };
      });
    const inspection = fc.record({
      jobId: id('j', size.jobs),
      after: fc.uniqueArray(slots(0, Math.max(0, Math.floor(size.phases / 2) - 1)), { maxLength: 2 }),
      notice: slots(0, 20),
      noticeIn: fc.constantFrom('working' as const, 'elapsed' as const),
      calendarId: id('k', 3),
      visit: slots(1, 3),
      ...(most ? { validFor: maybe(slots(0, 60)) } : {}),
      state: fc.oneof(
        fc.constant({ kind: 'open' as const }),
        fc.record({ kind: fc.constant('requested' as const), at: slots(0, size.now).map(slot) }),
        slots(0, 80).map((from) => ({ kind: 'booked' as const, from: slot(from), to: slot(from + 4) })),
        fc.record({ kind: fc.constant('passed' as const), at: slots(0, size.now).map(slot) }),
      ),
    });
    return fc
      .record({
        now: fc.constant(slot(size.now)),
        freezeUntil: slots(0, 60).map(slot),
        calendars: fc.array(openTime, { minLength: 3, maxLength: 3 }),
        crews: fc.array(
          fc.record({
            trades: fc.subarray(['mason', 'labour'], { minLength: 1 }),
            calendarId: id('k', 3),
          }),
          { minLength: size.crews, maxLength: size.crews },
        ),
        pools: fc.array(slots(1, 4), { minLength: size.pools, maxLength: size.pools }),
        weather: fc.array(fc.array(weatherHold, { maxLength: 4 }), { minLength: 2, maxLength: 2 }),
        jobs: fc.array(fc.record({ priority: slots(0, 2), due: maybe(slots(20, 300).map(slot)) }), {
          minLength: size.jobs,
          maxLength: size.jobs,
        }),
        phases: fc.array(phase, { minLength: size.phases, maxLength: size.phases }),
        links: fc.array(link, { maxLength: size.phases > 1 ? size.phases + 4 : 0 }),
        inspections: fc.array(inspection, { minLength: size.inspections, maxLength: size.inspections }),
      })
      .map((raw) => ({
        horizon: HORIZON,
        now: raw.now,
        freezeUntil: raw.freezeUntil,
        calendars: raw.calendars.map((open, i) => ({ id: `k${i}`, open })),
        crews: raw.crews.map((crew, i) => ({ id: `c${i}`, ...crew })),
        pools: raw.pools.map((quantity, i) => ({ id: `e${i}`, quantity })),
        weather: raw.weather.map((holds, i) => ({ id: `w${i}`, holds })),
        jobs: raw.jobs.map((job, i) => ({ id: `j${i}`, ...job })),
        phases: raw.phases.map((one, i): Phase => ({
          id: `p${i}`,
          ...one,
          holds: cycles ? one.holds : one.holds.map((hold) => forwards(hold, i)),
          gates: lateGates(one.gates, i, cycles, size.phases),
        })),
        links: raw.links.map((one, i): Link => ({ id: `l${String(i).padStart(2, '0')}`, ...one })),
        inspections: raw.inspections.map((one, i): Inspection => ({
          id: `i${i}`,
          ...one,
          after: one.after.map((n) => `p${n}`),
        })),
      }));
  });
}

/** Without cycles equipment comes back with a later phase, or with the phase itself. */
function forwards(hold: EquipmentHold, index: number): EquipmentHold {
  const until = hold.untilPhaseId === undefined ? index : Number(hold.untilPhaseId.slice(1));
  return until > index ? hold : { poolId: hold.poolId, quantity: hold.quantity };
}

/** Without cycles an inspection, which waits for phases of the first half, gates only phases of the second. */
function lateGates(gates: readonly Gate[], index: number, cycles: boolean, phases: number): readonly Gate[] {
  return cycles || index >= Math.floor(phases / 2)
    ? gates
    : gates.filter(({ kind }) => kind !== 'inspection');
}

/** The same input with every list turned around and its halves swapped. */
export function shuffled(input: PlanInput): PlanInput {
  const turn = <T>(list: readonly T[]): T[] => {
    const half = Math.floor(list.length / 2);
    return [...list.slice(half), ...list.slice(0, half)].reverse();
  };
  return {
    ...input,
    calendars: turn(input.calendars).map((calendar) => ({ ...calendar, open: turn(calendar.open) })),
    crews: turn(input.crews).map((crew) => ({ ...crew, trades: turn(crew.trades) })),
    pools: turn(input.pools),
    weather: turn(input.weather).map((set) => ({ ...set, holds: turn(set.holds) })),
    inspections: turn(input.inspections).map((one) => ({ ...one, after: turn(one.after) })),
    jobs: turn(input.jobs),
    phases: turn(input.phases).map((phase) => ({
      ...phase,
      gates: turn(phase.gates ?? []),
      holds: turn(phase.holds ?? []),
      weatherIds: turn(phase.weatherIds ?? []),
    })),
    links: turn(input.links),
  };
}
