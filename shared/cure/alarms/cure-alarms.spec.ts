import { describe, expect, it } from '@jest/globals';
import { describeSource } from '../../entry/source.js';
import { predictCure } from '../prediction/predict-cure.js';
import type { CureRequest } from '../prediction/cure-prediction.js';
import { airOf, requestOf, tentPlan } from '../testing/cure-fixture.js';
import { after, placementOf, readingsAt, steadyReadings } from '../testing/placement-fixture.js';
import { hours } from '../../units/time.js';
import { DEFAULT_MIXTURES } from '../mixture.js';
import { cureAlarms } from './cure-alarms.js';
import { lastReading } from './last-reading.js';
import { protectionOff } from './protection-may-come-off.js';

const factsOf = (hour: number, more: Partial<CureRequest> = {}) => {
  const request = requestOf({ plan: tentPlan(), ...more, now: after(hour) });
  return { request, prediction: predictCure(request), now: after(hour) };
};
const kindsAt = (hour: number, more: Partial<CureRequest> = {}) =>
  cureAlarms(factsOf(hour, more)).map(({ kind }) => kind);

describe('alarms of a cure', () => {
  it('are none while it is warm, read often and protected', () => {
    expect(kindsAt(6, { readings: readingsAt([3, 58], [6, 60]) })).toEqual([]);
  });

  it('froze early: a reading of 32 °F before 500 psi', () => {
    expect(kindsAt(6, { readings: readingsAt([3, 40], [6, 32]) })).toContain('froze-early');
    expect(kindsAt(6, { readings: readingsAt([3, 40], [6, 33]) })).not.toContain('froze-early');
  });

  it('nearing freezing: a reading of 37 °F, or a freezing expected within a day', () => {
    expect(kindsAt(6, { readings: readingsAt([3, 42], [6, 37]) })).toContain('nearing-freezing');
    expect(kindsAt(6, { readings: readingsAt([3, 42], [6, 38]) })).not.toContain('nearing-freezing');
    expect(kindsAt(0.25, { plan: { ...tentPlan(), heat: [], blankets: [] } })).toContain('nearing-freezing');
  });

  it('nearing freezing no longer once it has 500 psi', () => {
    const readings = [...steadyReadings(48, 70), ...readingsAt([54, 36])];
    expect(kindsAt(54, { readings })).not.toContain('nearing-freezing');
  });

  it('cooling fast: more than 5 °F in an hour', () => {
    expect(kindsAt(4, { readings: readingsAt([3, 65], [4, 59.9]) })).toContain('cooling-fast');
    expect(kindsAt(4, { readings: readingsAt([3, 65], [4, 60]) })).not.toContain('cooling-fast');
  });

  it('too cold: under 55 °F while it is protected, not after', () => {
    expect(kindsAt(6, { readings: readingsAt([6, 54.9]) })).toContain('too-cold');
    expect(kindsAt(6, { readings: readingsAt([6, 55]) })).not.toContain('too-cold');
    const readings = [...steadyReadings(72, 60), ...readingsAt([78, 50])];
    expect(kindsAt(78, { readings })).not.toContain('too-cold');
  });

  it('too warm: over 95 °F', () => {
    expect(kindsAt(6, { readings: readingsAt([6, 95.1]) })).toContain('too-warm');
    expect(kindsAt(6, { readings: readingsAt([6, 95]) })).not.toContain('too-warm');
  });

  it('reading missing: 6 h while it is young, 12 h afterwards', () => {
    expect(kindsAt(6)).not.toContain('reading-missing');
    expect(kindsAt(6.1)).toContain('reading-missing');
    const readings = steadyReadings(36, 70);
    expect(kindsAt(48, { readings })).not.toContain('reading-missing');
    expect(kindsAt(48.1, { readings })).toContain('reading-missing');
  });

  it('reading missing no longer when it is strong and its protection time is over', () => {
    expect(kindsAt(100, { readings: steadyReadings(72, 70) })).not.toContain('reading-missing');
  });

  it('come the most urgent first, each with source, limit and what to do', () => {
    const alarms = cureAlarms(factsOf(12.5, { readings: readingsAt([3, 40], [4, 31]) }));
    expect(alarms.map(({ kind }) => kind)).toEqual([
      'froze-early',
      'nearing-freezing',
      'cooling-fast',
      'too-cold',
      'reading-missing',
    ]);
    for (const { kind, finding } of alarms) {
      expect(finding.rule).toBe(kind);
      expect(finding.ok).toBe(false);
      expect(finding.limit).not.toBe('');
      expect(describeSource(finding.source)).toContain('[');
      expect(finding.text.length).toBeGreaterThan(20);
    }
  });
});

describe('protection', () => {
  const mild = airOf(168, () => 45);
  const strong = steadyReadings(72, 60);

  it('may come off after its days, with its strength measured, near the air', () => {
    expect(kindsAt(72, { air: mild, readings: strong })).toContain('protection-may-come-off');
  });

  it.each([
    ['its days of protection are not over', 66, steadyReadings(66, 60), mild],
    ['its required strength is not measured yet', 72, [], mild],
    ['no reading of the last 3 h', 76, strong, mild],
    ['the air is unknown', 72, strong, airOf(71, () => 45)],
    ['the surface is more than 20 °F over the air', 72, strong, airOf(168, () => 39)],
  ])('stays on: %s', (why, hour, readings, air) => {
    const facts = factsOf(hour, { readings, air });
    const finding = protectionOff(facts)!;
    expect(finding.ok).toBe(false);
    expect(finding.text).toContain(why);
    expect(cureAlarms(facts).map(({ kind }) => kind)).not.toContain('protection-may-come-off');
  });

  it('of an accelerated mixture is over a day sooner', () => {
    const placement = placementOf({ mixture: { ...DEFAULT_MIXTURES.concrete, accelerated: true } });
    const readings = steadyReadings(48, 60);
    expect(kindsAt(48, { air: mild, readings, placement })).toContain('protection-may-come-off');
    expect(kindsAt(48, { air: mild, readings })).not.toContain('protection-may-come-off');
  });

  it('that is not there, or came off, needs no leave', () => {
    const bare = { ...tentPlan(), heat: [], blankets: [] };
    expect(protectionOff(factsOf(72, { air: mild, readings: strong, plan: bare }))).toBeNull();
    const off = { ...tentPlan(), offAt: hours(70) };
    expect(protectionOff(factsOf(72, { air: mild, readings: strong, plan: off }))).toBeNull();
  });
});

describe('the newest reading', () => {
  it('is the newest up to now, and of two at one instant the colder', () => {
    const request = requestOf({ readings: readingsAt([2, 60], [5, 50], [5, 48], [5, 52], [9, 70]) });
    expect(lastReading(request, after(6))).toMatchObject({ at: after(5), concrete: 48 });
    expect(lastReading(requestOf(), after(6))).toBeNull();
  });
});
