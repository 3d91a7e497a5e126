import { describe, expect, it } from '@jest/globals';
import { barStop, dayStop, readStop } from './stops.js';

describe('what the keyboard can go to', () => {
  it('is found again by its id', () => {
    const id = '01932b7e-0000-7000-8000-00000000000a';
    expect(readStop(barStop(id))).toEqual({ kind: 'bar', phaseId: id });
    expect(readStop(dayStop(id, '2031-01-15'))).toEqual({ kind: 'day', jobId: id, date: '2031-01-15' });
  });

  it.each([null, '', 'detail', 'day-x', 'day-x-tomorrow'])('%j is none', (id) => {
    expect(readStop(id)).toBeNull();
  });
});
