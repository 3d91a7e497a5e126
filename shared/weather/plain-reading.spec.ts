import { describe, expect, it } from '@jest/globals';
import fc from 'fast-check';
import { coldLimit, h, temperatures } from './testing/hour-values.js';
import { weatherRequirements } from './weather-requirements.js';
import type { WeatherLimit } from './weather-limit.js';
import { weatherWindows } from './weather-windows.js';

/*
 * Windows against a plain reading: hour by hour, from the sentence of each member of a limit, over numbers that are all
 * known. Whatever the unknown hours of a forecast turn out to be, what it called closed must be closed and what it called
 * open must be open.
 */

/** Whether each hour is closed, read plainly; hours before the first and after the last do not count. */
function plainReading(limit: WeatherLimit, air: readonly number[]): boolean[] {
  const below = limit.stop === 'below';
  const beyond = (value: number, bound: number, inclusive: boolean, under: boolean) =>
    value === bound ? inclusive : under ? value < bound : value > bound;
  const day = (from: number) => {
    const hours = air.slice(from, from + 24);
    return from >= 0 && hours.length === 24 ? (Math.min(...hours) + Math.max(...hours)) / 2 : null;
  };
  const judged = air.map((value, i) => {
    if (limit.dailyMean === 'before') return day(i - 23);
    return limit.dailyMean === 'after' ? day(i) : value;
  });
  const moves = (i: number, down: boolean, values: readonly (number | null)[]) => {
    const [a, b] = [values[i - 1] ?? null, values[i] ?? null];
    return a !== null && b !== null && (down ? b < a : b > a);
  };
  const turning = limit.turningHours;
  let run = 0;
  let closed = false;
  const states = air.map((_, i) => {
    const value = judged[i] ?? null;
    let broken = value !== null && beyond(value, limit.value, limit.inclusive, below);
    if (turning !== undefined && !moves(i, below, judged)) broken = false;
    let opens = true;
    const fair = (k: number) =>
      air[k] !== undefined &&
      (limit.reopen
        ? beyond(air[k], limit.reopen.value, limit.reopen.inclusive, !below)
        : beyond(air[k], limit.value, !limit.inclusive, !below));
    if (limit.reopen && limit.reopen.hours > 0) {
      let count = 0;
      for (let k = i - limit.reopen.within; k < i; k++) if (fair(k)) count += 1;
      opens = count >= limit.reopen.hours;
    } else if (limit.reopen || turning !== undefined) {
      opens = fair(i);
    }
    if (turning !== undefined) {
      const expected = air
        .slice(i, i + turning + 1)
        .some((next) => (below ? next >= limit.value : next <= limit.value));
      opens = opens && moves(i, !below, air) && expected;
    }
    const latched = limit.reopen !== undefined || turning !== undefined;
    const lasting = limit.lastingHours ?? 0;
    if (lasting > 0) {
      run = broken && !(latched && opens) ? run + 1 : 0;
      broken = run > lasting;
    }
    if (broken) closed = true;
    else if (!latched || opens) closed = false;
    return closed;
  });
  return states.map((_, i) =>
    states.slice(Math.max(0, i - limit.backHours), i + limit.aheadHours + 1).some((state) => state),
  );
}

const degrees = fc.integer({ min: 30, max: 50 });
const small = (max: number) => fc.integer({ min: 0, max });
const sometimes = <T>(arbitrary: fc.Arbitrary<T>) => fc.option(arbitrary, { nil: undefined });
const reopening = fc
  .record({
    value: fc.integer({ min: 36, max: 46 }),
    inclusive: fc.boolean(),
    hours: small(4),
    more: small(4),
  })
  .map(({ more, ...one }) => ({ ...one, within: one.hours + more }));

/** Leaves out what is undefined, as a limit does. */
const limitOf = ({ ...more }: Record<string, unknown>): WeatherLimit =>
  coldLimit(Object.fromEntries(Object.entries(more).filter(([, value]) => value !== undefined)));

const plainLimit = fc
  .record({
    stop: fc.constantFrom('below', 'above'),
    value: fc.integer({ min: 34, max: 46 }),
    inclusive: fc.boolean(),
    aheadHours: small(5),
  })
  .map(limitOf);
const anyLimit = fc
  .record({
    stop: fc.constantFrom('below', 'above'),
    value: fc.integer({ min: 34, max: 46 }),
    inclusive: fc.boolean(),
    aheadHours: small(5),
    backHours: small(5),
    dailyMean: sometimes(fc.constantFrom('before', 'after')),
    lastingHours: sometimes(small(6)),
    reopen: sometimes(reopening),
    turningHours: sometimes(small(5)),
  })
  .map(limitOf);

/** What the windows say of each hour. */
function said(limit: WeatherLimit, values: readonly (number | null)[]): ('closed' | 'open' | 'unknown')[] {
  const { closed, unknown, unknownAfter } = weatherWindows(
    [limit],
    temperatures(...values),
    h(0),
    h(values.length),
  );
  const inside = (i: number, list: readonly { from: number; to: number }[]) =>
    list.some(({ from, to }) => from <= h(i) && h(i) < to);
  return values.map((_, i) => {
    if (inside(i, closed)) return 'closed';
    const silent = inside(i, unknown) || (unknownAfter !== null && h(i) >= unknownAfter);
    return silent ? 'unknown' : 'open';
  });
}

describe('windows against a plain reading', () => {
  it('close the same hours where a limit has no memory, and know all but the last of them', () => {
    fc.assert(
      fc.property(plainLimit, fc.array(degrees, { minLength: 1, maxLength: 60 }), (limit, air) => {
        const plain = plainReading(limit, air);
        const windows = said(limit, air);
        expect(windows.map((word) => word === 'closed')).toEqual(plain);
        expect(windows.slice(0, Math.max(0, air.length - limit.aheadHours))).not.toContain('unknown');
      }),
    );
  });

  it('are right of every limit, however much it remembers and whatever the unknown hours turn out to be', () => {
    const hours = fc.array(fc.record({ air: degrees, known: fc.integer({ min: 0, max: 9 }) }), {
      minLength: 1,
      maxLength: 70,
    });
    fc.assert(
      fc.property(anyLimit, hours, (limit, given) => {
        const plain = plainReading(
          limit,
          given.map(({ air }) => air),
        );
        const windows = said(
          limit,
          given.map(({ air, known }) => (known > 0 ? air : null)),
        );
        windows.forEach((word, i) => {
          if (word !== 'unknown') expect([i, word]).toEqual([i, plain[i] ? 'closed' : 'open']);
        });
      }),
      { numRuns: 1000 },
    );
  });

  it('are not undone by hours before the first or after the last', () => {
    const memory = anyLimit.filter(({ reopen, turningHours }) => !reopen && turningHours === undefined);
    const some = fc.array(degrees, { maxLength: 30 });
    fc.assert(
      fc.property(
        memory,
        some,
        fc.array(degrees, { minLength: 1, maxLength: 60 }),
        some,
        (limit, before, air, after) => {
          const plain = plainReading(limit, [...before, ...air, ...after]);
          said(limit, air).forEach((word, i) => {
            if (word !== 'unknown')
              expect([i, word]).toEqual([i, plain[before.length + i] ? 'closed' : 'open']);
          });
        },
      ),
      { numRuns: 500 },
    );
  });

  it('know what a limit that looks back says once the record is long enough', () => {
    const limit = coldLimit({ backHours: 5 });
    fc.assert(
      fc.property(fc.array(degrees, { minLength: 6, maxLength: 60 }), (air) => {
        expect(said(limit, air).slice(5)).not.toContain('unknown');
      }),
    );
  });

  it('know all of a limit that reopens once there were fair hours enough to begin with', () => {
    fc.assert(
      fc.property(reopening, fc.array(degrees, { minLength: 1, maxLength: 60 }), (reopen, air) => {
        const limit = coldLimit({ reopen });
        const values = [...Array.from({ length: 8 }, () => 60), ...air];
        const plain = plainReading(limit, values);
        expect(said(limit, values)).toEqual(plain.map((closed) => (closed ? 'closed' : 'open')));
      }),
    );
  });

  it('name a cause that lies on the wrong side of the limit or keeps it closed, and is no better than any other', () => {
    fc.assert(
      fc.property(plainLimit, fc.array(degrees, { minLength: 1, maxLength: 60 }), (limit, air) => {
        const { closed } = weatherWindows([limit], temperatures(...air), h(0), h(air.length));
        for (const { from, to, causes } of closed) {
          const [cause] = causes;
          const index = air.findIndex((_, i) => h(i) === cause?.hour);
          expect(air[index]).toBe(cause?.value);
          const own = air.filter((_, i) => h(i) >= from && h(i) < to);
          const worst = limit.stop === 'below' ? Math.min(...own) : Math.max(...own);
          expect(limit.stop === 'below' ? cause!.value <= worst : cause!.value >= worst).toBe(true);
        }
      }),
    );
  });
});

describe('requirements against a plain reading', () => {
  it('are asked for exactly in the hours that break them, and stand unknown in no others than the silent ones', () => {
    const hours = fc.array(fc.option(degrees), { minLength: 1, maxLength: 60 });
    fc.assert(
      fc.property(plainLimit, hours, (limit, values) => {
        const found = weatherRequirements([limit], temperatures(...values), h(0), h(values.length));
        const windows = said(limit, values);
        values.forEach((_, i) => {
          const at = found.filter(({ from, to }) => from <= h(i) && h(i) < to);
          expect(at.length).toBe(windows[i] === 'open' ? 0 : 1);
          expect(at.every(({ cause }) => (cause === null) === (windows[i] === 'unknown'))).toBe(true);
        });
      }),
    );
  });
});
