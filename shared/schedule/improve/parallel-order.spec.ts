import { describe, expect, test } from '@jest/globals';
import fc from 'fast-check';
import type { Link, Phase, PlanInput } from '../model.js';
import { slot } from '../slot.js';
import { cure, inputWith, link, work } from '../spec-input.js';
import { parallelOrder } from './parallel-order.js';

/** Starts by id, smallest key first in the order of `first`. */
function starts(input: PlanInput, first: readonly string[] = []): Record<string, number> {
  const ids = input.phases.map(({ id }) => id).sort();
  const keys = Float64Array.from(ids, (id) => (first.includes(id) ? first.indexOf(id) : 99));
  const lengths = Int32Array.from(ids, (id) => input.phases.find((phase) => phase.id === id)!.duration.slots);
  const got = parallelOrder(input, keys, lengths);
  return Object.fromEntries(ids.map((id, i) => [id, got[i]!]));
}

const heater = { pools: [{ id: 'heater', quantity: 2 }] };
const heated = (quantity: number): Partial<Phase> => ({
  trade: undefined,
  holds: [{ poolId: 'heater', quantity }],
});

describe('parallel generation', () => {
  test('lets whatever is ready start at once, smallest key first where they want the same crew', () => {
    const input = inputWith({ phases: [work('a', 5), work('b', 3), work('c', 2)], links: [link('a', 'c')] });
    expect(starts(input)).toEqual({ a: 0, b: 5, c: 8 });
    expect(starts(input, ['b'])).toEqual({ a: 3, b: 0, c: 8 });
    expect(starts(input, ['c'])).toEqual({ a: 0, b: 7, c: 5 });
  });

  test('keeps nothing free for what comes later, however urgent', () => {
    const urgent = work('urgent', 4, { gates: [{ kind: 'notBefore', id: 'x', at: slot(2), cause: 'x' }] });
    expect(starts(inputWith({ phases: [urgent, work('long', 9)] }), ['urgent'])).toEqual({
      long: 0,
      urgent: 9,
    });
  });

  test('waits for equipment and takes it back at the finish', () => {
    const phases = [work('a', 5, heated(2)), work('b', 3, heated(1)), work('c', 4, heated(1))];
    expect(starts(inputWith({ ...heater, phases }))).toEqual({ a: 0, b: 5, c: 5 });
  });

  test('waits for the crew that is named, and for crews of the trade only', () => {
    const crews = [
      { id: 'one', trades: ['mason'], calendarId: 'workdays' },
      { id: 'two', trades: ['labour'], calendarId: 'workdays' },
    ];
    const phases = [
      work('a', 5),
      work('b', 3, { trade: undefined, crewId: 'one' }),
      work('c', 2, { trade: 'labour' }),
    ];
    expect(starts(inputWith({ crews, phases }))).toEqual({ a: 0, b: 5, c: 0 });
  });

  test('counts each kind of link from the end it is tied to', () => {
    const of = (kind: Link['kind'], lag: number): number =>
      starts(inputWith({ phases: [cure('a', 10), cure('b', 4)], links: [link('a', 'b', kind, lag)] }))['b']!;
    expect([of('FS', 1), of('SS', 1), of('FF', 1), of('SF', 6)]).toEqual([11, 1, 7, 2]);
  });

  test('waits for dated gates and takes undated ones as open', () => {
    const gated = (id: string, gate: NonNullable<Phase['gates']>[number]): Phase =>
      cure(id, 2, { gates: [gate] });
    const phases = [
      gated('a', { kind: 'clearance', id: 'permit', earliest: slot(7) }),
      gated('b', { kind: 'clearance', id: 'permit', earliest: null }),
      gated('c', { kind: 'cure', id: 'footing', expected: slot(9) }),
      gated('d', { kind: 'cure', id: 'footing', expected: null }),
      gated('e', { kind: 'inspection', inspectionId: 'visit' }),
    ];
    expect(starts(inputWith({ phases }))).toEqual({ a: 7, b: 0, c: 9, d: 0, e: 0 });
  });

  test('puts at the end what waits for itself, for equipment nobody has or for a trade nobody does', () => {
    const phases = [
      cure('a', 2),
      cure('b', 2),
      work('c', 2, heated(3)),
      work('d', 2, { trade: 'roofer' }),
      work('e', 2),
    ];
    const input = inputWith({ ...heater, phases, links: [link('a', 'b'), link('b', 'a')] });
    const { horizon } = input;
    expect(starts(input)).toEqual({ a: horizon, b: horizon, c: horizon, d: horizon, e: 0 });
  });

  test('never uses more than there is, and keeps links, whatever the keys', () => {
    const drawn = fc.record({
      lengths: fc.array(fc.integer({ min: 1, max: 9 }), { minLength: 8, maxLength: 8 }),
      needs: fc.array(fc.nat(2), { minLength: 8, maxLength: 8 }),
      ties: fc.array(fc.tuple(fc.nat(7), fc.nat(7)), { maxLength: 8 }),
      first: fc.shuffledSubarray(['0', '1', '2', '3', '4', '5', '6', '7']),
    });
    fc.assert(
      fc.property(drawn, ({ lengths, needs, ties, first }) => {
        const phases = lengths.map((length, i) => work(`${i}`, length, i % 3 === 0 ? {} : heated(needs[i]!)));
        const links = ties
          .filter(([a, b]) => a < b)
          .map(([a, b], i) => ({ ...link(`${a}`, `${b}`), id: `${i}` }));
        const got = starts(inputWith({ ...heater, phases, links }), first);
        for (const { from, to } of links) {
          expect(got[to]!).toBeGreaterThanOrEqual(got[from]! + lengths[Number(from)]!);
        }
        for (let t = 0; t < 80; t++) {
          const on = phases.filter(({ id }) => got[id]! <= t && t < got[id]! + lengths[Number(id)]!);
          expect(on.filter(({ trade }) => trade !== undefined).length).toBeLessThanOrEqual(1);
          expect(on.reduce((sum, { holds }) => sum + (holds?.[0]?.quantity ?? 0), 0)).toBeLessThanOrEqual(2);
        }
        expect(Math.max(...Object.values(got))).toBeLessThan(80);
      }),
    );
  });
});
