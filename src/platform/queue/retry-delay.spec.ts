import { describe, expect, test } from '@jest/globals';
import { entryName } from './queue-entry.js';
import { MOST_ATTEMPTS, retryDelay } from './retry-delay.js';

describe('the pause before another attempt', () => {
  test('begins with a second and doubles', () => {
    expect([1, 2, 3, 4, 5].map(retryDelay)).toEqual([1_000, 2_000, 4_000, 8_000, 16_000]);
  });

  test('never grows past a quarter of an hour, and never shrinks', () => {
    const pauses = Array.from({ length: 40 }, (_, index) => retryDelay(index + 1));
    expect(Math.max(...pauses)).toBe(15 * 60_000);
    expect(pauses).toEqual([...pauses].sort((a, b) => a - b));
  });

  test('gives a mail server half an hour to come back before a delivery is given up', () => {
    const pauses = Array.from({ length: MOST_ATTEMPTS - 1 }, (_, index) => retryDelay(index + 1));
    expect(pauses.reduce((sum, pause) => sum + pause, 0)).toBeGreaterThan(30 * 60_000);
  });
});

describe('the name of an entry', () => {
  test('has no colon and is no bare number, which the queue refuses', () => {
    for (const kind of ['outbox', 'reminder', 'delivery', 'improvement', 'forecast'] as const) {
      expect(entryName({ kind, id: '12', generation: 3 })).toBe(`${kind}-12-3`);
    }
  });

  test('tells rows, kinds and generations apart', () => {
    const names = [
      entryName({ kind: 'outbox', id: '1', generation: 1 }),
      entryName({ kind: 'outbox', id: '1', generation: 2 }),
      entryName({ kind: 'outbox', id: '2', generation: 1 }),
      entryName({ kind: 'delivery', id: '1', generation: 1 }),
    ];
    expect(new Set(names).size).toBe(names.length);
  });
});
