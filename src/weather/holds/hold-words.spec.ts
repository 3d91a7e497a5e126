import { describe, expect, it } from '@jest/globals';
import { type HoldOccasion, liftReason, openedFor } from './hold-words.js';
import { isSamePrint, type SitePrint, storedPrint, triggerOf } from './site-print.js';

const occasion = (more: Partial<HoldOccasion> = {}): HoldOccasion => ({
  trigger: 'forecast',
  issuedAt: new Date('2031-01-06T14:00:00Z'),
  zone: 'America/New_York',
  added: [],
  live: true,
  ...more,
});

describe('words about a hold', () => {
  it('say what brought it about, in the time of the site', () => {
    expect(openedFor(occasion())).toBe('The forecast issued Mon 6 Jan 09:00.');
    expect(openedFor(occasion({ zone: 'America/Denver' }))).toBe('The forecast issued Mon 6 Jan 07:00.');
    const others = (['limits', 'work', 'time'] as const).map((trigger) => openedFor(occasion({ trigger })));
    expect(new Set(others).size).toBe(3);
  });

  it('say why it was lifted, the work before the weather', () => {
    expect(liftReason(occasion())).toBe('The forecast issued Mon 6 Jan 09:00 no longer breaks the limit.');
    expect(liftReason(occasion({ live: false }))).toMatch(/done or dropped/);
    expect(liftReason(occasion({ trigger: 'limits' }))).toMatch(/limits were changed/);
    expect(liftReason(occasion({ trigger: 'work', added: ['blanket', 'enclosure'] }))).toBe(
      'The work is under protection now (blanket, enclosure), which lifts the limit.',
    );
    expect(liftReason(occasion({ trigger: 'work' }))).toBe('The limit is no longer broken.');
  });
});

describe('what changed for a phase', () => {
  const print = (more: Partial<SitePrint> = {}): SitePrint => ({
    forecast: 'f',
    limits: 'l',
    work: { p: 'w' },
    hour: 5,
    ...more,
  });
  const changed = (more: Partial<SitePrint>, phaseId = 'p', arrives = false) =>
    triggerOf(print(), print(more), { phaseId, arrives });

  it('is nothing while all is the same within the hour', () => {
    expect(isSamePrint(storedPrint(JSON.stringify(print())), print())).toBe(true);
    expect(isSamePrint(print(), print({ hour: 6 }))).toBe(false);
    expect(isSamePrint(print(), print({ work: { p: 'w', q: 'v' } }))).toBe(false);
    expect(isSamePrint(null, print())).toBe(false);
  });

  it('is named by what weighs most', () => {
    expect(changed({ hour: 6 })).toBe('time');
    expect(changed({ hour: 6, work: { p: 'x' } })).toBe('work');
    expect(changed({ limits: 'x', work: { p: 'x' } })).toBe('limits');
    expect(changed({ forecast: 'x', limits: 'x' }, 'p', true)).toBe('forecast');
  });

  it('is the time for work that has come near, and the work itself for what is new within the hour', () => {
    const work = { p: 'w', q: 'v' };
    expect(changed({ hour: 6, work }, 'q')).toBe('time');
    expect(changed({ work }, 'q')).toBe('work');
    // Its limits come into sight with it.
    expect(changed({ hour: 6, work, limits: 'x' }, 'q')).toBe('time');
  });

  it('is the time at a site that was never looked at, unless a forecast arrives', () => {
    const never = storedPrint(null);
    expect(triggerOf(never, print(), { phaseId: 'p', arrives: false })).toBe('time');
    expect(triggerOf(never, print(), { phaseId: 'p', arrives: true })).toBe('forecast');
  });
});
