import { describe, expect, it } from '@jest/globals';
import fc from 'fast-check';
import { HOUR_MS } from '../units/time.js';
import { settleHolds, type HoldFacts, type HoldMove, type StandingHold } from './settle-holds.js';
import { coldLimit, h, inHours, temperatures } from './testing/hour-values.js';
import { weatherWindows } from './weather-windows.js';

const AHEAD = 72;

/** Windows of a forecast of one temperature an hour: closed under 40 °F, unknown where it is null. */
const windowsOf = (values: readonly (number | null)[]) =>
  weatherWindows([coldLimit()], temperatures(...values), h(0), h(400));
const stretch = (from: number, to: number) => ({ from: h(from), to: h(to) });
const hold = (id: string, from: number, to: number): StandingHold => ({ id, ...stretch(from, to) });

const settle = (values: readonly (number | null)[], more: Partial<HoldFacts> = {}) =>
  settleHolds({
    now: h(0),
    aheadMs: AHEAD * HOUR_MS,
    windows: windowsOf(values),
    work: [stretch(0, 400)],
    standing: [],
    answered: [],
    ...more,
  });
const said = (moves: readonly HoldMove[]) =>
  moves.map((move) =>
    move.kind === 'lift'
      ? ['lift', move.id, move.into]
      : [move.kind, 'id' in move ? move.id : null, ...(inHours([move.stretch])[0] ?? [])],
  );

describe('holds of the forecast', () => {
  it('open where planned work meets a closed stretch, and nowhere else', () => {
    const values = [50, 30, 30, 50, 30, 50];
    expect(said(settle(values))).toEqual([
      ['open', null, 1, 3],
      ['open', null, 4, 5],
    ]);
    expect(said(settle(values, { work: [stretch(2, 4)] }))).toEqual([['open', null, 1, 3]]);
    expect(said(settle(values, { work: [stretch(3, 4)] }))).toEqual([]);
  });

  it('open for work of the time ahead only, over the whole of their stretch', () => {
    const night = Array.from({ length: 90 }, (_, i) => (i >= 70 ? 30 : 50));
    expect(said(settle(night))).toEqual([['open', null, 70, 90]]);
    expect(said(settle(night, { aheadMs: 70 * HOUR_MS }))).toEqual([]);
  });

  it('begin now where their stretch has begun', () => {
    expect(said(settle([30, 30, 30, 50], { now: h(2) }))).toEqual([['open', null, 2, 3]]);
    expect(said(settle([30, 30, 30, 50], { now: h(3) }))).toEqual([]);
  });

  it('stay while their stretch is closed, though the plan has gone around it', () => {
    const standing = [hold('a', 1, 3)];
    expect(said(settle([50, 30, 30, 50], { standing, work: [] }))).toEqual([['keep', 'a', 1, 3]]);
    expect(said(settle([50, 30, 30, 30, 50], { standing, work: [] }))).toEqual([['keep', 'a', 1, 4]]);
  });

  it('are lifted when it opens, kept where it falls apart, and joined where two become one', () => {
    expect(said(settle([50, 50, 50, 50], { standing: [hold('a', 1, 3)] }))).toEqual([['lift', 'a', null]]);
    expect(said(settle([50, 30, 50, 30, 50], { standing: [hold('a', 1, 4)], work: [] }))).toEqual([
      ['keep', 'a', 1, 2],
      ['open', null, 3, 4],
    ]);
    expect(said(settle([30, 30, 30, 30, 50], { standing: [hold('b', 3, 4), hold('a', 0, 1)] }))).toEqual([
      ['keep', 'a', 0, 4],
      ['lift', 'b', 'a'],
    ]);
  });

  it('stay over what the forecast does not say, cut down to it', () => {
    expect(said(settle([50, 50, null, 50, 50], { standing: [hold('a', 1, 4)] }))).toEqual([
      ['cut', 'a', 2, 3],
    ]);
    expect(said(settle([50, 50], { standing: [hold('a', 1, 4)] }))).toEqual([['cut', 'a', 2, 4]]);
    expect(said(settle([], { standing: [hold('a', 1, 4)] }))).toEqual([['cut', 'a', 1, 4]]);
  });

  it('do not open again over what a person answers for, but after it', () => {
    const answered = [stretch(1, 3)];
    expect(said(settle([50, 30, 30, 50], { answered }))).toEqual([]);
    expect(said(settle([50, 30, 30, 30, 50], { answered }))).toEqual([['open', null, 3, 4]]);
  });
});

describe('any forecast', () => {
  const values = fc.array(fc.option(fc.integer({ min: 30, max: 50 })), { minLength: 1, maxLength: 60 });
  const someStretch = fc
    .tuple(fc.integer({ min: 0, max: 60 }), fc.integer({ min: 1, max: 20 }))
    .map(([from, length]) => stretch(from, from + length));
  const someHolds = fc
    .uniqueArray(fc.integer({ min: 0, max: 9 }), { maxLength: 4 })
    .map((places) => places.map((place) => hold(`h${place}`, place * 6, place * 6 + 5)));
  const anyFacts = fc.record({
    values,
    work: fc.array(someStretch, { maxLength: 4 }),
    answered: fc.array(someStretch, { maxLength: 2 }),
    standing: someHolds,
  });

  /** The holds after the moves. */
  const after = (moves: readonly HoldMove[]): StandingHold[] =>
    moves.flatMap((move, i): StandingHold[] => {
      if (move.kind === 'lift') return [];
      const id = move.kind === 'open' ? `new${i}` : move.id;
      return [{ id, from: move.stretch.from, to: move.stretch.to }];
    });

  it('says something about every standing hold, and nothing twice', () => {
    fc.assert(
      fc.property(anyFacts, ({ values: given, ...facts }) => {
        const moves = settle(given, facts);
        const ids = moves.flatMap((move) => ('id' in move ? move.id : []));
        expect([...ids].sort()).toEqual(facts.standing.map(({ id }) => id).sort());
      }),
    );
  });

  it('leaves nothing to do once it is done', () => {
    fc.assert(
      fc.property(anyFacts, ({ values: given, ...facts }) => {
        const standing = after(settle(given, facts));
        const again = settle(given, { ...facts, standing });
        expect(after(again)).toEqual(
          again.map((move) => standing.find(({ id }) => 'id' in move && id === move.id)),
        );
      }),
    );
  });

  it('holds planned work exactly in closed hours that nobody answers for', () => {
    fc.assert(
      fc.property(values, fc.array(someStretch, { maxLength: 2 }), (given, answered) => {
        const holds = after(settle(given, { answered }));
        given.forEach((value, i) => {
          const within = (one: { from: number; to: number }) => one.from <= h(i) && h(i) < one.to;
          expect(holds.some(within)).toBe(value !== null && value < 40 && !answered.some(within));
        });
      }),
    );
  });
});
