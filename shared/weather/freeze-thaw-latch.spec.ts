import { expect, it } from '@jest/globals';
import fc from 'fast-check';
import { celsius } from '../units/temperature.js';
import { freezeThawLatch } from './freeze-thaw-latch.js';

const anyReading = fc.record({
  now: fc.integer({ min: -10, max: 15 }).map(celsius),
  before: fc.integer({ min: -10, max: 15 }).map(celsius),
  expected: fc.integer({ min: -10, max: 15 }).map(celsius),
});

it('never starts in falling air and never stops in rising air', () => {
  fc.assert(
    fc.property(anyReading, (reading) => {
      if (reading.now < reading.before) expect(freezeThawLatch(false, reading)).toBe(false);
      if (reading.now > reading.before) expect(freezeThawLatch(true, reading)).toBe(true);
    }),
  );
});

it('stays as it is while nothing moves', () => {
  fc.assert(
    fc.property(anyReading, fc.boolean(), (reading, running) => {
      expect(freezeThawLatch(running, { ...reading, before: reading.now })).toBe(running);
    }),
  );
});
