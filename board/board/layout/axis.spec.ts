import { describe, expect, it } from '@jest/globals';
import fc from 'fast-check';
import { daysFrom } from '../../time/zone-days.js';
import { makeAxis } from './axis.js';

const days = daysFrom('2031-03-03', 14, 'America/New_York');
const axis = makeAxis(days, 80);

describe('the axis of the days', () => {
  it('gives every day the same width, those of a clock change too', () => {
    days.forEach((day, index) => expect(axis.x(day.start)).toBeCloseTo(index * 80, 9));
    expect(axis.x(days.at(-1)?.end ?? 0)).toBe(14 * 80);
  });

  it('gives four fifths of a day to the hours from 6 to 18', () => {
    const dawn = axis.x(Date.parse('2031-03-03T11:00:00Z'));
    const dusk = axis.x(Date.parse('2031-03-03T23:00:00Z'));
    expect(dawn).toBeCloseTo(8, 9);
    expect(dusk - dawn).toBeCloseTo(64, 9);
  });

  it('puts moments outside the days at the edges', () => {
    expect(axis.x(axis.start - 1)).toBe(0);
    expect(axis.x(axis.end + 1)).toBe(axis.width);
  });

  it('never turns back as time goes on', () => {
    const moment = fc.integer({ min: axis.start - 1e6, max: axis.end + 1e6 });
    fc.assert(
      fc.property(moment, moment, (a, b) => {
        expect(axis.x(Math.min(a, b))).toBeLessThanOrEqual(axis.x(Math.max(a, b)));
      }),
    );
  });

  it('knows the moment that stands at a distance, on days of a clock change too', () => {
    const inside = fc.integer({ min: axis.start, max: axis.end - 1 });
    fc.assert(
      fc.property(inside, (moment) => {
        expect(Math.abs(axis.momentAt(axis.x(moment)) - moment)).toBeLessThan(2);
      }),
    );
    expect(axis.momentAt(-5)).toBe(axis.start);
    expect(axis.momentAt(axis.width + 5)).toBe(axis.end);
  });
});
