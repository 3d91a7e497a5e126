import { describe, expect, it } from '@jest/globals';
import fc from 'fast-check';
import { psi } from '../units/stress.js';
import { fahrenheit } from '../units/temperature.js';
import { hoursBetween } from '../units/time.js';
import { assumedTemperature } from './assumed-temperature.js';
import { cureRelease } from './cure-release.js';
import { measuredStrength } from './measured-strength.js';
import { predictedRelease } from './predicted-release.js';
import { after, placementOf, readingsAt, steadyReadings } from './testing/placement-fixture.js';

describe('a predicted release', () => {
  it('says that it is predicted, and what was assumed', () => {
    const release = predictedRelease(placementOf(), [], after(0), fahrenheit(55));
    expect(release).toMatchObject({
      basis: 'predicted',
      assumption: 'concrete at 55 °F from the last reading on',
      required: 1000,
      caution: expect.stringContaining('estimate from temperature'),
    });
    expect(release).not.toHaveProperty('strength');
  });

  it('is later in colder concrete', () => {
    const at = (t: number) =>
      predictedRelease(placementOf(), [], after(0), fahrenheit(t)).releaseAt ?? Infinity;
    expect(at(55)).toBeLessThan(at(50));
    expect(at(50)).toBeLessThan(at(40));
  });

  it('never comes at freezing', () => {
    expect(predictedRelease(placementOf(), [], after(0), fahrenheit(32)).releaseAt).toBeNull();
    expect(predictedRelease(placementOf(), [], after(0), fahrenheit(10)).releaseAt).toBeNull();
  });

  it('never comes for more than the mixture has', () => {
    const placement = placementOf({ required: psi(9000) });
    expect(predictedRelease(placement, [], after(0), fahrenheit(60)).releaseAt).toBeNull();
  });

  it('comes nearer with warm readings and goes away with cold ones', () => {
    const from = (t: number) =>
      predictedRelease(placementOf(), steadyReadings(12, t), after(12), fahrenheit(55)).releaseAt ?? Infinity;
    expect(from(70)).toBeLessThan(from(55));
    expect(from(40)).toBeGreaterThan(from(55));
  });

  it('is now or past when the readings have reached it', () => {
    const release = predictedRelease(placementOf(), steadyReadings(48, 60), after(48), fahrenheit(20));
    expect(release.releaseAt).toBe(after(48));
  });

  it('agrees with what is measured when the assumption comes true', () => {
    fc.assert(
      fc.property(fc.integer({ min: 40, max: 80 }), (t) => {
        const placement = placementOf({ placedTemperature: fahrenheit(t) });
        const release = predictedRelease(placement, [], after(0), fahrenheit(t));
        if (release.releaseAt === null) throw new Error('never');
        const wait = hoursBetween(after(0), release.releaseAt);
        const steps = Math.ceil(wait / 6) + 1;
        const readings = readingsAt(
          ...Array.from({ length: steps }, (_, i): [number, number] => [(i + 1) * 6, t]),
        );
        expect(measuredStrength(placement, readings, after(steps * 6)).reached).toBe(true);
        const short = readingsAt(
          ...Array.from({ length: Math.floor(wait / 6) }, (_, i): [number, number] => [(i + 1) * 6, t]),
        );
        if (wait % 6 > 0.01) expect(measuredStrength(placement, short, after(wait)).reached).toBe(false);
      }),
    );
  });
});

describe('the temperature that is assumed', () => {
  it.each<[string[], number, number, string]>([
    [['enclosure'], 10, 55, 'P'],
    [['enclosure', 'blanket'], 10, 55, 'P'],
    [['blanket'], 10, 50, 'C'],
    [[], 10, 10, 'C'],
    [['enclosure'], 80, 80, 'P'],
    [['blanket'], 70, 70, 'C'],
  ])('under %j at %p °F outside is %p °F', (protection, air, expected, mark) => {
    const assumed = assumedTemperature(protection, fahrenheit(air));
    expect(assumed.temperature).toBe(expected);
    expect(assumed.source.mark).toBe(mark);
  });
});

describe('releasing a cure', () => {
  const warm = measuredStrength(placementOf(), steadyReadings(48, 60), after(48));
  const cold = measuredStrength(placementOf(), steadyReadings(6, 40), after(6));
  const predicted = predictedRelease(placementOf(), [], after(0), fahrenheit(60));
  const decision = { by: 'R. Alder, engineer', reason: 'cylinders broke at 1,400 psi' };

  it('on measured strength', () => {
    expect(cureRelease(warm)).toMatchObject({
      ok: true,
      on: 'measured',
      text: expect.stringContaining('psi measured of 1000'),
    });
  });

  it('not on too little measured strength', () => {
    expect(cureRelease(cold)).toMatchObject({
      ok: false,
      text: expect.stringContaining('Not strong enough'),
    });
  });

  it('never on a prediction, however long past its date', () => {
    expect(predicted.releaseAt).toBeLessThan(after(1000));
    expect(cureRelease(predicted)).toMatchObject({
      ok: false,
      text: expect.stringContaining('A prediction never releases'),
    });
  });

  it('on the authority of a named person with a reason, whatever the estimate', () => {
    for (const estimate of [cold, predicted]) {
      expect(cureRelease(estimate, decision)).toEqual({
        ok: true,
        on: 'decision',
        text: 'Released by R. Alder, engineer: cylinders broke at 1,400 psi',
      });
    }
  });

  it.each([
    { by: '', reason: 'looks hard' },
    { by: 'R. Alder', reason: '  ' },
  ])('not on %j: a decision has a name and a reason', (given) => {
    expect(cureRelease(predicted, given).ok).toBe(false);
  });

  it('prefers the measurement where both are there', () => {
    expect(cureRelease(warm, decision)).toMatchObject({ on: 'measured' });
  });
});
