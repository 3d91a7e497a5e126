import { describe, expect, it } from '@jest/globals';
import { type HoldOccasion, liftReason, openedFor } from './hold-words.js';
import { type SitePrint, triggerOf } from './site-print.js';

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

describe('what changed at a site', () => {
  const print = (more: Partial<SitePrint> = {}): SitePrint => ({
    forecast: 'f',
    limits: 'l',
    work: 'w',
    hour: 5,
    ...more,
  });
  const changed = (more: Partial<SitePrint>) => triggerOf(JSON.stringify(print()), print(more));

  it('is nothing while all is the same within the hour', () => {
    expect(changed({})).toBeNull();
  });

  it('is named by what weighs most', () => {
    expect(changed({ hour: 6 })).toBe('time');
    expect(changed({ hour: 6, work: 'x' })).toBe('work');
    expect(changed({ limits: 'x', work: 'x' })).toBe('limits');
    expect(changed({ forecast: 'x', limits: 'x' })).toBe('forecast');
  });

  it('is the forecast where the site was never looked at', () => {
    expect(triggerOf(null, print())).toBe('forecast');
  });
});
