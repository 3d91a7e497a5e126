import { describe, expect, it } from '@jest/globals';
import { barTimes } from './bar-times.js';
import { trialCommitment, trialPhase } from './testing/trial-phase.js';

const at = (iso: string) => Date.parse(iso);
const NOW = at('2031-01-14T15:00:00Z');

describe('the times a bar is drawn at', () => {
  it('are the planned ones before the start', () => {
    expect(barTimes(trialPhase(), NOW)).toEqual({
      from: at('2031-01-13T12:00:00Z'),
      to: at('2031-01-13T20:00:00Z'),
    });
  });

  it('reach to now when a phase is started and its plan has run out', () => {
    const phase = trialPhase({ state: 'started', actualStart: '2031-01-13T13:00:00Z' });
    expect(barTimes(phase, NOW)).toEqual({ from: at('2031-01-13T13:00:00Z'), to: NOW });
  });

  it('are what happened once it is done', () => {
    const phase = trialPhase({
      state: 'done',
      actualStart: '2031-01-13T13:00:00Z',
      actualFinish: '2031-01-13T17:00:00Z',
    });
    expect(barTimes(phase, NOW)).toEqual({
      from: at('2031-01-13T13:00:00Z'),
      to: at('2031-01-13T17:00:00Z'),
    });
  });

  it('are the committed ones where nothing is planned, and none without either', () => {
    const commitment = trialCommitment('2031-01-15T12:00:00Z', '2031-01-15T14:00:00Z');
    expect(barTimes(trialPhase({ planned: null, commitment }), NOW)?.from).toBe(at('2031-01-15T12:00:00Z'));
    expect(barTimes(trialPhase({ planned: null }), NOW)).toBeNull();
  });
});
