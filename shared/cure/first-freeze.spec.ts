import { describe, expect, it } from '@jest/globals';
import { fahrenheit } from '../units/temperature.js';
import { FIRST_FREEZE, firstFreeze } from './first-freeze.js';
import { measuredStrength } from './measured-strength.js';
import { after, placementOf, PLACED, readingsAt, steadyReadings } from './testing/placement-fixture.js';

// Source: ACI 306.1-90 as restated by Beall 2004 (published): no freezing before 500 psi (3.45 MPa).
describe('the first freeze', () => {
  it('is asked at 500 psi', () => {
    expect(FIRST_FREEZE).toBe(500);
  });

  it('is no matter while the concrete stays warm', () => {
    expect(firstFreeze(placementOf(), steadyReadings(48, 55), after(48))).toMatchObject({
      rule: 'first-freeze',
      ok: true,
      frozenAt: null,
      measured: 'not frozen',
    });
  });

  it('before 500 psi is a fault, with its hour and the strength it had', () => {
    const finding = firstFreeze(placementOf(), readingsAt([4, 50], [8, 31]), after(8));
    expect(finding).toMatchObject({
      ok: false,
      frozenAt: after(8),
      limit: 'at least 500 psi before freezing',
    });
    expect(finding.measured).toMatch(/^\d+ psi at the first freezing$/);
    expect(finding.text).toContain('engineer');
    expect(finding.source.mark).toBe('P');
    expect(finding.caution).toBeTruthy();
  });

  it('after 500 psi is none', () => {
    const readings = [...steadyReadings(36, 60), ...readingsAt([42, 31])];
    expect(measuredStrength(placementOf(), readings, after(36)).strength).toBeGreaterThan(500);
    expect(firstFreeze(placementOf(), readings, after(42))).toMatchObject({ ok: true, frozenAt: after(42) });
  });

  it('counts 32 °F as frozen and 33 °F as not', () => {
    expect(firstFreeze(placementOf(), readingsAt([4, 32]), after(4)).frozenAt).toBe(after(4));
    expect(firstFreeze(placementOf(), readingsAt([4, 33]), after(4)).frozenAt).toBeNull();
  });

  it('is not undone by warmth afterwards', () => {
    const readings = [...readingsAt([4, 30]), ...steadyReadings(96, 70).slice(1)];
    expect(firstFreeze(placementOf(), readings, after(96))).toMatchObject({ ok: false, frozenAt: after(4) });
  });

  it('may be the placing itself', () => {
    const frozen = placementOf({ placedTemperature: fahrenheit(30) });
    expect(firstFreeze(frozen, [], after(1))).toMatchObject({ ok: false, frozenAt: PLACED });
  });

  it('is not seen before it is measured', () => {
    expect(firstFreeze(placementOf(), readingsAt([4, 50], [8, 20]), after(6)).ok).toBe(true);
  });
});
