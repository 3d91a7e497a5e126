import { describe, expect, it } from '@jest/globals';
import { barTimes } from './bar-times.js';
import { committedRule } from './committed-rule.js';
import { trialCommitment, trialPhase } from './testing/trial-phase.js';

const rule = (changes: Parameters<typeof trialPhase>[0]) => {
  const phase = trialPhase(changes);
  const times = barTimes(phase, 0);
  return times && committedRule(phase, times);
};

const asPlanned = trialCommitment('2031-01-13T12:00:00Z', '2031-01-13T20:00:00Z');
const dayBefore = trialCommitment('2031-01-12T12:00:00Z', '2031-01-12T20:00:00Z');

describe('the rule of committed dates', () => {
  it('is drawn where the plan differs from what was told', () => {
    expect(rule({ commitment: dayBefore })?.from).toBe(Date.parse('2031-01-12T12:00:00Z'));
  });

  it('is drawn when another crew was told', () => {
    expect(rule({ commitment: { ...asPlanned, crew: { id: 'c2', name: 'Second masons' } } })).not.toBeNull();
  });

  it('is left out where they agree, where it was released, and where the phase is done', () => {
    expect(rule({ commitment: asPlanned })).toBeNull();
    expect(rule({ commitment: { ...dayBefore, state: 'released' } })).toBeNull();
    expect(rule({ commitment: dayBefore, state: 'done', actualStart: '2031-01-13T12:00:00Z' })).toBeNull();
    expect(rule({})).toBeNull();
  });
});
