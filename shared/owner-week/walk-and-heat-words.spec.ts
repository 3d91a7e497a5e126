import { describe, expect, it } from '@jest/globals';
import type { OwnerHeat, OwnerPhase } from './owner-facts.js';
import { heatWords, OWNER_HEAT_CAUTION } from './heat-words.js';
import { walkWords } from './walk-words.js';

const say = (moment: number) => `day ${moment}`;
const phase = (
  kind: string,
  from: number,
  until: number,
  state: OwnerPhase['state'] = 'waiting',
): OwnerPhase => ({
  kind,
  state,
  stretches: [{ from, until }],
  agreed: true,
});

describe('when the walk is closed', () => {
  const entry = (state: OwnerPhase['state']) => [
    phase('demo', 10, 12, state),
    phase('stone', 20, 25, state),
    phase('bed-cure', 25, 28, state),
    phase('bed-cure', 26, 30, state),
  ];

  it('is told before it is, with both ends', () => {
    expect(walkWords(entry('waiting'), 5, say)).toMatch(/broken out on day 10.*closed until day 30/);
  });

  it('is told while it is, and lasts until the last bed has hardened', () => {
    expect(walkWords(entry('started'), 10, say)).toMatch(/^The walk and the steps are closed until day 30/);
    // The day has come, but nobody has recorded that the bed has hardened.
    expect(walkWords(entry('started'), 31, say)).toContain('closed until day 30');
  });

  it('is over once every bed is done', () => {
    expect(walkWords(entry('done'), 31, say)).toBe('The walk and the steps are open again since day 30.');
  });

  it('is left to the office where the plan does not say', () => {
    expect(walkWords([], 5, say)).toContain('office will tell');
    expect(walkWords([phase('demo', 10, 12)], 5, say)).toContain('office will tell');
  });
});

describe('when the heat may be switched on', () => {
  const heat = (more: Partial<OwnerHeat> = {}): OwnerHeat => ({
    sets: 2,
    energised: 0,
    allowedAt: null,
    plannedAt: null,
    ...more,
  });
  it.each([
    [heat({ sets: 0 }), 'no heat'],
    [heat({ energised: 2 }), 'you may use it'],
    [heat({ energised: 1 }), 'not known yet'],
    [heat({ energised: 1, plannedAt: 60 }), 'around day 60'],
    [heat({ allowedAt: 50, plannedAt: 60 }), 'from day 50 on'],
    [heat({ allowedAt: 40 }), 'The electrician switches it on'],
  ])('%#', (facts, words) => {
    expect(heatWords(facts, 40, say)).toContain(words);
  });

  it('never invites to switch on what is not finished', () => {
    for (const facts of [heat(), heat({ allowedAt: 50 }), heat({ allowedAt: 30 }), heat({ plannedAt: 30 })])
      expect(heatWords(facts, 40, say)).not.toContain('you may use it');
    expect(OWNER_HEAT_CAUTION).toContain('licensed electrician');
  });
});
