import { describe, expect, it } from '@jest/globals';
import { protectionFaults } from '../../../shared/cure/protection/check-plan.js';
import { hours } from '../../../shared/units/time.js';
import { protectionSchema } from './protection.input.js';
import { BARE, isBare, kindsOf, planOf, protectionWords, specOfKinds } from './protection-spec.js';

describe('a protection', () => {
  it('of which only kinds are known is the trade’s way with a small pour', () => {
    // Rule of the trade, no source: heated in a tent for 10 to 12 hours, then left under blankets.
    expect(specOfKinds(['blanket', 'enclosure', 'heater'])).toMatchObject({
      blanketLayers: 1,
      heatHours: 12,
    });
    expect(specOfKinds(['blanket'])).toMatchObject({ blanketLayers: 1, enclosureF: null, heatHours: 0 });
    expect(isBare(specOfKinds([]))).toBe(true);
  });

  it('takes equipment by what it is made of', () => {
    expect(kindsOf(specOfKinds(['enclosure']))).toEqual(['enclosure', 'heater']);
    expect(kindsOf(BARE)).toEqual([]);
  });

  it.each([
    [BARE, 'no protection'],
    [{ ...BARE, blanketLayers: 1 }, '1 layer of blanket (R 4 each)'],
    [
      { blanketLayers: 2, blanketR: 5, enclosureF: 60, heatHours: 12 },
      '2 layers of blanket (R 5 each), tent kept at 60 °F for 12 h',
    ],
  ])('%j in words', (spec, words) => {
    expect(protectionWords(spec)).toBe(words);
  });

  it('as it is entered can always be carried out', () => {
    for (const given of [
      {},
      { blanketLayers: 3 },
      { enclosure: true },
      { enclosure: true, enclosureF: 33, heatHours: 336 },
    ])
      expect(protectionFaults(planOf(protectionSchema.parse(given), hours(48)))).toEqual([]);
  });

  it.each([
    [{ blanketLayers: 9 }, 'must be 0 to 6 layers'],
    [{ blanketR: 0 }, 'must be 0.1 to 30'],
    [{ enclosure: true, enclosureF: 20 }, 'must be 33 to 100 °F'],
    [{ heatHours: -1 }, 'must be 0 to 336 h'],
  ])('%j is refused with its bounds', (given, message) => {
    expect(protectionSchema.safeParse(given).error?.issues[0]?.message).toContain(message);
  });

  it('drops what belongs to an enclosure where there is none', () => {
    expect(protectionSchema.parse({ blanketLayers: 1, enclosureF: 70, heatHours: 9 })).toMatchObject({
      enclosureF: null,
      heatHours: 0,
    });
  });
});
