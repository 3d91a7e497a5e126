import { describe, expect, it } from '@jest/globals';
import fc from 'fast-check';
import { DEFAULT_MIXTURES } from '../../../shared/cure/mixture.js';
import { predictCure } from '../../../shared/cure/prediction/predict-cure.js';
import { psi } from '../../../shared/units/stress.js';
import { fahrenheit } from '../../../shared/units/temperature.js';
import { epochMs } from '../../../shared/units/time.js';
import { planOf, specOfKinds } from '../protection/protection-spec.js';
import { sectionOf } from './cure-request.js';
import { outlookOf, thinned } from './outlook-of.js';

const PLACED = Date.UTC(2031, 0, 6, 14);

const predicted = (kinds: readonly string[], air: number) =>
  predictCure({
    placement: {
      placedAt: epochMs(PLACED),
      placedTemperature: fahrenheit(60),
      mixture: DEFAULT_MIXTURES.concrete,
      required: psi(1000),
    },
    section: sectionOf('concrete', 10),
    plan: planOf(specOfKinds(kinds)),
    readings: [],
    now: epochMs(PLACED),
    air: [],
    assumedAir: fahrenheit(air),
  });

describe('a prediction as callers see it', () => {
  it('says when, on what basis, and how cold, with its source and caution', () => {
    const outlook = outlookOf(predicted(['blanket'], 20), 1000);
    expect(outlook).toMatchObject({
      requiredPsi: 1000,
      release: { basis: 'predicted', psi: null },
      lowest: { coldestF: expect.any(Number) },
      freezes: null,
      mark: 'M',
      caution: expect.stringContaining('estimate'),
    });
  });

  it('is drawn to a day after its strength, and whole where that is out of sight', () => {
    const reached = outlookOf(predicted(['blanket'], 40), 1000);
    const last = reached.points.at(-1)?.at.getTime() ?? 0;
    const needed = Math.max(reached.release?.at.getTime() ?? 0, reached.firstFreeze?.at.getTime() ?? 0);
    expect(last).toBeLessThanOrEqual(needed + 24 * 3_600_000);
    expect(last).toBeGreaterThan(needed);
    const lost = outlookOf(predicted([], 10), 1000);
    expect(lost).toMatchObject({ release: null, freezes: { psi: expect.any(Number) } });
    expect(lost.points.at(-1)?.at.getTime()).toBeGreaterThan(PLACED + 13 * 24 * 3_600_000);
  });

  it('lies as what is placed lies: concrete on the ground, grout free in its block, mortar as a bed', () => {
    expect(['concrete', 'grout', 'mortar'].map((material) => sectionOf(material, 8).kind)).toEqual([
      'on-ground',
      'free',
      'bed',
    ]);
  });
});

describe('a thinned list', () => {
  it('keeps its first and its last, its order, and no more than it may', () => {
    fc.assert(
      fc.property(fc.array(fc.integer()), fc.integer({ min: 2, max: 50 }), (list, most) => {
        const thin = thinned(list, most);
        expect(thin.length).toBeLessThanOrEqual(most + 1);
        expect([thin[0], thin.at(-1)]).toEqual([list[0], list.at(-1)]);
        if (list.length <= most) expect(thin).toEqual(list);
      }),
    );
  });
});
