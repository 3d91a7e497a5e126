import { describe, expect, test } from '@jest/globals';
import { keepingFaults } from './redis-keeps.js';

const keeping = { evicts: 'noeviction', appendOnly: 'yes', save: '' };

describe('whether a Redis keeps the queue', () => {
  test('one that never evicts and appends to a file does', () => {
    expect(keepingFaults(keeping)).toEqual([]);
  });

  test('one that writes snapshots does too', () => {
    expect(keepingFaults({ ...keeping, appendOnly: 'no', save: '3600 1 300 100' })).toEqual([]);
  });

  test.each(['allkeys-lru', 'allkeys-lfu', 'allkeys-random', 'volatile-lru', 'volatile-ttl'])(
    'one with the policy %s does not',
    (evicts) => {
      expect(keepingFaults({ ...keeping, evicts })).toEqual([expect.stringContaining(`is "${evicts}"`)]);
    },
  );

  test('one that answers nothing about itself does not', () => {
    expect(keepingFaults({ evicts: '', appendOnly: '', save: '' })).toHaveLength(2);
  });
});
