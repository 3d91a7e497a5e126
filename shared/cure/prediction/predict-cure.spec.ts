import { describe, expect, it } from '@jest/globals';
import fc from 'fast-check';
import { rValue } from '../../units/insulation.js';
import { inches } from '../../units/length.js';
import { psi } from '../../units/stress.js';
import { fahrenheit } from '../../units/temperature.js';
import { hours, hoursBetween } from '../../units/time.js';
import { measuredStrength } from '../measured-strength.js';
import { DEFAULT_MIXTURES } from '../mixture.js';
import { smallPourPlan } from '../protection/protection-plan.js';
import { airOf, requestOf, tentPlan } from '../testing/cure-fixture.js';
import { after, placementOf, readingsAt, steadyReadings } from '../testing/placement-fixture.js';
import { predictCure } from './predict-cure.js';

describe('a footing placed at 28 °F falling to 12 °F', () => {
  it('freezes before 500 psi without protection, and is never seen to reach its strength', () => {
    const cure = predictCure(requestOf());
    expect(cure.freezes).toMatchObject({ basis: 'predicted' });
    expect(cure.freezes!.strength).toBeLessThan(500);
    expect(cure.release).toBeNull();
    expect(cure.hoursToFirstFreeze).toBeNull();
    expect(cure.lowest.coldest).toBeLessThan(20);
  });

  it('heated in a tent and then under blankets does not, and has a date', () => {
    const cure = predictCure(requestOf({ plan: tentPlan() }));
    expect(cure.freezes).toBeNull();
    expect(cure.lowest.coldest).toBeGreaterThan(40);
    expect(cure.release).toMatchObject({ basis: 'predicted' });
    expect(cure.hoursToFirstFreeze).toBeLessThan(hoursBetween(after(0), cure.release!.at));
  });

  it('keeps its heat balance and says what it rests on', () => {
    const cure = predictCure(
      requestOf({ plan: tentPlan(), readings: readingsAt([4, 58], [8, 61]), now: after(9) }),
    );
    expect(cure.energyError).toBeLessThan(1e-3);
    expect(cure.method).toContain('Nurse–Saul');
    expect(cure.method).toContain('conduction through the section');
    expect(cure.assumption).toBe('nothing is predicted where the air is unknown');
    expect(cure.source.mark).toBe('M');
    expect(cure.caution).toContain('engineer');
  });

  it('is ready sooner with an accelerator, and gets there at all with more cement', () => {
    const of = (more: object) =>
      predictCure(
        requestOf({
          plan: tentPlan(),
          placement: placementOf({ mixture: { ...DEFAULT_MIXTURES.concrete, ...more } }),
        }),
      );
    expect(of({ accelerated: true }).release!.at).toBeLessThan(of({}).release!.at);
    expect(of({ cementLbPerYd3: 650 }).release!.at).toBeLessThan(of({ cementLbPerYd3: 400 }).release!.at);
  });
});

describe('readings', () => {
  const readings = readingsAt([3, 57], [6, 60], [9, 63]);
  const cure = predictCure(requestOf({ plan: tentPlan(), readings, now: after(10) }));
  const measured = cure.points.filter(({ basis }) => basis === 'measured');
  const predicted = cure.points.filter(({ basis }) => basis === 'predicted');

  it('replace the prediction up to the last of them; the two are told apart', () => {
    expect(measured.map(({ at }) => at)).toEqual([after(0), after(3), after(6), after(9)]);
    expect(measured.map(({ counted }) => Math.round(counted))).toEqual([60, 57, 60, 63]);
    expect(predicted.every(({ at }) => at > after(9))).toBe(true);
    expect(cure.points.map(({ at }) => at)).toEqual(
      [...cure.points.map(({ at }) => at)].sort((a, b) => a - b),
    );
  });

  it('give the same strength as readings alone do', () => {
    const alone = measuredStrength(placementOf(), readings, after(10));
    expect(measured.at(-1)!.strength).toBeCloseTo(alone.strength, 6);
  });

  it('carry the model over: it goes on from the temperature that was read', () => {
    const first = predicted[0]!;
    expect(Math.abs(first.counted - 63)).toBeLessThan(4);
    const colder = predictCure(
      requestOf({ plan: tentPlan(), readings: readingsAt([3, 50], [6, 46], [9, 43]), now: after(10) }),
    );
    expect(colder.points.find(({ basis }) => basis === 'predicted')!.counted).toBeLessThan(
      first.counted - 10,
    );
    expect(colder.release!.at).toBeGreaterThan(cure.release!.at);
  });

  it('that are still to come are not looked at', () => {
    const future = predictCure(requestOf({ readings: readingsAt([5, 90]), now: after(4) }));
    expect(future).toEqual(predictCure(requestOf({ now: after(4) })));
  });

  it('that show the strength make the release a measured one', () => {
    const all = predictCure(requestOf({ readings: steadyReadings(48, 70), now: after(48) }));
    expect(all.release).toMatchObject({ basis: 'measured' });
    expect(all.firstFreeze).toMatchObject({ basis: 'measured' });
    expect(all.freezes).toBeNull();
  });

  it('of 32 °F before 500 psi make the freezing a measured one', () => {
    const frozen = predictCure(requestOf({ readings: readingsAt([2, 40], [5, 31]), now: after(6) }));
    expect(frozen.freezes).toMatchObject({ at: after(5), basis: 'measured' });
  });

  it('too far apart add no strength', () => {
    const far = predictCure(requestOf({ readings: readingsAt([13, 60]), now: after(13) }));
    expect(far.points.filter(({ basis }) => basis === 'measured').at(-1)!.strength).toBe(0);
  });
});

describe('air that nobody knows', () => {
  it('ends the prediction, for unknown is never fair', () => {
    const cure = predictCure(requestOf({ air: airOf(10, () => 45) }));
    expect(cure.unknownFrom).toBe(after(10));
    expect(cure.airKnownUntil).toBe(after(10));
    expect(cure.points.at(-1)!.at).toBeLessThanOrEqual(after(10));
    expect(cure.release).toBeNull();
  });

  it('can be assumed, and is shown as assumed', () => {
    const cure = predictCure(requestOf({ air: airOf(10, () => 45), assumedAir: fahrenheit(45) }));
    expect(cure.unknownFrom).toBeNull();
    expect(cure.airKnownUntil).toBe(after(10));
    expect(cure.assumption).toContain('45 °F');
    expect(
      cure.points
        .filter(({ at, basis }) => basis === 'predicted' && at > after(11))
        .every((p) => !p.airKnown),
    ).toBe(true);
    expect(cure.release).not.toBeNull();
  });

  it('is a gap in the forecast too', () => {
    const gap = airOf(40, () => 45).filter((_, hour) => hour < 5 || hour > 8);
    expect(predictCure(requestOf({ air: gap })).unknownFrom).toBe(after(5));
    const none = airOf(40, () => 45).map((hour, i) => (i === 7 ? { ...hour, temperature: null } : hour));
    expect(predictCure(requestOf({ air: none })).unknownFrom).toBe(after(7));
  });

  it('does not matter inside a heated enclosure', () => {
    const cure = predictCure(requestOf({ air: [], plan: tentPlan(24), horizon: hours(48) }));
    expect(cure.unknownFrom).toBe(after(24));
    expect(cure.airKnownUntil).toBeNull();
  });
});

describe('any placement', () => {
  const air = fc.array(fc.integer({ min: -10, max: 60 }), { minLength: 72, maxLength: 72 });

  it('is never colder for more blankets, nor ready later', () => {
    fc.assert(
      fc.property(
        air,
        fc.integer({ min: 4, max: 20 }),
        fc.integer({ min: 1, max: 5 }),
        (temps, thick, layers) => {
          const of = (count: number) =>
            predictCure(
              requestOf({
                air: airOf(72, (hour) => Math.min(40, temps[hour]!)),
                section: { kind: 'free', thickness: inches(thick) },
                plan: smallPourPlan({
                  blanketLayers: count,
                  blanketR: rValue(4),
                  enclosure: null,
                  heatHours: hours(0),
                }),
              }),
            );
          const [less, more] = [of(layers), of(layers + 1)];
          // Air that warms again reaches covered concrete later: half a degree is left for that.
          expect(more.lowest.coldest).toBeGreaterThanOrEqual(less.lowest.coldest - 0.5);
          if (more.freezes) expect(less.freezes).not.toBeNull();
        },
      ),
      { numRuns: 40 },
    );
  });

  it('gains strength, never loses it, and the same input gives the same answer', () => {
    fc.assert(
      fc.property(air, (temps) => {
        const request = requestOf({ air: airOf(72, (hour) => temps[hour]!), plan: tentPlan() });
        const cure = predictCure(request);
        cure.points.slice(1).forEach((point, i) => {
          expect(point.strength).toBeGreaterThanOrEqual(cure.points[i]!.strength - 1e-9);
          expect(point.coldest).toBeLessThanOrEqual(point.counted + 1e-9);
        });
        expect(predictCure(request)).toEqual(cure);
      }),
      { numRuns: 40 },
    );
  });

  it('has nearly the same date with steps of 5 and of 30 minutes', () => {
    const at = (stepMinutes: number) => predictCure(requestOf({ plan: tentPlan(), stepMinutes })).release!.at;
    expect(Math.abs(hoursBetween(after(0), at(5)) - hoursBetween(after(0), at(30)))).toBeLessThan(1);
  });

  it('of the thin kind is a bed that follows the air, and freezes sooner than a footing', () => {
    const of = (kind: 'bed' | 'on-ground', thickness: number) =>
      predictCure(
        requestOf({
          section: { kind, thickness: inches(thickness), coldest: 'face' },
          placement: placementOf({ mixture: DEFAULT_MIXTURES.mortar }),
        }),
      );
    expect(of('bed', 1.5).freezes!.at).toBeLessThan(of('on-ground', 10).freezes!.at);
  });

  it('under stone is a bed that cools more slowly', () => {
    const of = (stone: number | null) =>
      predictCure(
        requestOf({
          section: {
            kind: 'bed',
            thickness: inches(1.5),
            stone: stone === null ? null : inches(stone),
            coldest: 'face',
            ground: fahrenheit(50),
          },
        }),
      );
    expect(of(2).freezes!.at).toBeGreaterThanOrEqual(of(null).freezes!.at);
  });

  it('that needs nothing is ready as placed; one that needs too much is never', () => {
    const of = (required: number) =>
      predictCure(requestOf({ placement: placementOf({ required: psi(required) }) }));
    expect(of(0).release).toEqual({ at: after(0), basis: 'measured' });
    expect(of(9000).release).toBeNull();
  });

  it('refuses a step that is no step', () => {
    expect(() => predictCure(requestOf({ stepMinutes: 0 }))).toThrow('give 1 to 360');
  });
});
