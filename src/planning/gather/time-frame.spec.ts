import { describe, expect, it } from '@jest/globals';
import fc from 'fast-check';
import { slotsOf, TimeFrame } from './time-frame.js';

const NOW = Date.parse('2031-01-06T14:07:00Z');
const DAY = 86_400_000;

describe('the planning axis', () => {
  it('begins a day before now, at midnight UTC, and reaches its days', () => {
    const frame = new TimeFrame(NOW, NOW, 400);
    expect(new Date(frame.startMs).toISOString()).toBe('2031-01-05T00:00:00.000Z');
    expect(frame.endMs - frame.startMs).toBe(400 * DAY);
  });

  it('begins with the earliest fact, but not more than 60 days back', () => {
    const at = (daysBack: number) =>
      new Date(new TimeFrame(NOW, NOW - daysBack * DAY, 400).startMs).toISOString().slice(0, 10);
    expect([at(10), at(300)]).toEqual(['2030-12-27', '2030-11-07']);
  });

  it('never lets now be earlier than it is', () => {
    fc.assert(
      fc.property(fc.integer({ min: 0, max: 4e12 }), (nowMs) => {
        const frame = new TimeFrame(nowMs, nowMs, 400);
        const now = frame.ms(frame.now);
        expect(now).toBeGreaterThanOrEqual(nowMs);
        expect(now - nowMs).toBeLessThan(15 * 60_000);
      }),
    );
  });

  it('gives a slot back as the instant it was made of, and keeps the order of facts', () => {
    const frame = new TimeFrame(NOW, NOW, 400);
    fc.assert(
      fc.property(
        fc.integer({ min: -9000, max: 38_400 }),
        fc.integer({ min: 0, max: 1e7 }),
        (slot, later) => {
          const ms = frame.startMs + slot * 15 * 60_000;
          expect(frame.ms(frame.at(ms))).toBe(ms);
          expect(frame.ms(frame.before(ms))).toBe(ms);
          expect(frame.at(ms + later)).toBeGreaterThanOrEqual(frame.at(ms));
          expect(frame.at(ms + later) - frame.before(ms + later)).toBeLessThanOrEqual(1);
        },
      ),
    );
  });

  it('rounds minutes up to slots; a lead stays a lead', () => {
    expect([0, 1, 15, 16, -15, -20].map(slotsOf)).toEqual([0, 1, 1, 2, -1, -1]);
  });
});
