import { describe, expect, it } from '@jest/globals';
import { DEFAULT_LIMIT_SETS } from '../../shared/weather/default-limit-sets.js';
import { limitSetsInForce } from './limit-sets.js';
import { limitWords } from './limit-words.js';
import { limitsSchema } from './limits-schema.js';

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

  it('can be saved as they come: every default passes the check', () => {
    for (const { limits } of DEFAULT_LIMIT_SETS)
      expect(limitsSchema.parse(JSON.parse(JSON.stringify(limits)))).toEqual(limits);
  });

  it('are the company’s own where it has some, and the defaults for the rest', () => {
    const row = { id: 'r', companyId: 'c', key: 'stone', name: 'Our stone', limits: [], revision: 4 };
    const sets = limitSetsInForce([row]);
    expect(sets.filter(({ key }) => key === 'stone')).toEqual([
      { id: 'r', key: 'stone', name: 'Our stone', limits: [], revision: 4 },
    ]);
    expect(sets.map(({ key }) => key).sort()).toEqual(DEFAULT_LIMIT_SETS.map(({ key }) => key).sort());
  });
});
