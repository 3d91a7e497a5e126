import { describe, expect, it } from '@jest/globals';
import { DEFAULT_LIMIT_SETS } from '../../shared/weather/default-limit-sets.js';
import { CONCRETE_REQUIREMENTS } from '../../shared/weather/concrete-requirements.js';
import { FREEZE_THAW_LIMIT } from '../../shared/weather/freeze-thaw-limit.js';
import { MASONRY_REQUIREMENTS } from '../../shared/weather/masonry-requirements.js';
import type { WeatherLimit } from '../../shared/weather/weather-limit.js';
import { limitSetsInForce } from './limit-sets.js';
import { limitWords, requirementWords } from './limit-words.js';

describe('limits of the weather', () => {
  it('say where they stop the work, and what lifts them', () => {
    const limits = DEFAULT_LIMIT_SETS.flatMap((set) => set.limits);
    const words = (id: string) => limits.filter((limit) => limit.id === id).map(limitWords)[0];
    expect(words('masonry-enclosure')).toBe(
      'Masonry needs an enclosure above 32 °F: stops under 20 °F, and at it, lifted by enclosure',
    );
    expect(words('hot-wind')).toBe(
      'Too hot for mortar in wind over 8 mph: stops over 90 °F, with wind over 8 mph',
    );
    expect(words('veneer-freeze')).toBe(
      'Freezes within 24 h: stops under 32 °F, and at it, also when it comes within 24 h after, lifted by enclosure or blanket',
    );
  });

  it('say what they remember and when they open again', () => {
    const [{ id, ...period }] = CONCRETE_REQUIREMENTS as [WeatherLimit];
    expect(id).toBe('cold-period');
    expect(requirementWords({ id, ...period, text: 'Cold' })).toBe(
      'Cold: asked for by the mean of the 24 h up to it, under 40 °F, after more than 72 h of it, until 13 h of 24 were over 50 °F',
    );
    expect(limitWords({ ...FREEZE_THAW_LIMIT, text: 'Cold' })).toBe(
      'Cold: stops under 37.4 °F, and at it, only while it moves on, until it turns and is expected back within 6 h, until it is at or over 33.8 °F',
    );
    const wet = { ...FREEZE_THAW_LIMIT, reopen: { value: 45, inclusive: false, hours: 3, within: 3 } };
    expect(limitWords(wet)).toMatch(/until 3 h in a row were over 45 °F$/);
  });

  it('are the company’s own where it has some, and the defaults for the rest', () => {
    const row = {
      id: 'r',
      companyId: 'c',
      key: 'stone',
      name: 'Our stone',
      limits: [],
      requirements: [],
      revision: 4,
    };
    const sets = limitSetsInForce([row]);
    expect(sets.filter(({ key }) => key === 'stone')).toEqual([
      { id: 'r', key: 'stone', name: 'Our stone', limits: [], requirements: [], revision: 4 },
    ]);
    expect(sets.map(({ key }) => key).sort()).toEqual(DEFAULT_LIMIT_SETS.map(({ key }) => key).sort());
  });

  it('keep asking what the default asks where the company has only its own limits', () => {
    const row = {
      id: 'r',
      companyId: 'c',
      key: 'masonry',
      name: 'M',
      limits: [],
      requirements: null,
      revision: 1,
    };
    const own = limitSetsInForce([row]).find(({ key }) => key === 'masonry');
    expect(own?.requirements).toBe(MASONRY_REQUIREMENTS);
  });

  it('that were never checked are not used', () => {
    const row = {
      id: 'r',
      companyId: 'c',
      key: 'stone',
      name: 'S',
      limits: [{}],
      requirements: null,
      revision: 1,
    };
    expect(() => limitSetsInForce([row])).toThrow(/weather limits "stone" cannot be read: .*\[0\]\.id/);
  });
});
