import { describe, expect, it } from '@jest/globals';
import { ownValueInput } from './own-value.js';
import type { Send } from './send.js';

const send = (change: Send['change'], input: object, standing: string | null): Send => ({
  key: 'k',
  change,
  title: '',
  input: { ...input },
  state: 'conflict',
  message: '',
  details: [],
  conflict: { field: '', theirs: '', mine: '', standing, changedBy: null, currentRevision: 9 },
});

describe('the own value over the other', () => {
  it('is asked for in sight of what stands', () => {
    expect(ownValueInput(send('notePhase', { note: 'Water', seen: null, revision: 1 }, 'Rock'))).toEqual({
      note: 'Water',
      seen: 'Rock',
      revision: 9,
    });
    expect(ownValueInput(send('markPhase', { seen: '2031-01-06T13:00:00.000Z' }, null))).toEqual({
      seen: null,
      revision: 9,
    });
  });

  it('counts minutes where minutes are told', () => {
    expect(ownValueInput(send('tellRemaining', { remainingMinutes: 90 }, '120'))).toEqual({
      remainingMinutes: 90,
      seen: 120,
      revision: 9,
    });
  });
});
