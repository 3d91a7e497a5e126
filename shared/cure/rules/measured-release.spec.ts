import { describe, expect, it } from '@jest/globals';
import fc from 'fast-check';
import { fahrenheit } from '../../units/temperature.js';
import { psi } from '../../units/stress.js';
import { epochMs, HOUR_MS } from '../../units/time.js';
import { measuredStrength } from '../measured-strength.js';
import { DEFAULT_MIXTURES } from '../mixture.js';
import { STRENGTH_CAUTION } from '../placement.js';
import { measuredRelease } from './measured-release.js';

const PLACED = epochMs(Date.parse('2031-01-06T14:00:00Z'));
const mixture = DEFAULT_MIXTURES.concrete;

/** What a placement shows that was read every six hours at one temperature. */
const after = (hours: number, degrees: number, required = psi(1000)) => {
  const placement = { placedAt: PLACED, placedTemperature: fahrenheit(degrees), mixture, required };
  const readings = Array.from({ length: Math.floor(hours / 6) }, (_, i) => ({
    at: epochMs(PLACED + (i + 1) * 6 * HOUR_MS),
    concrete: fahrenheit(degrees),
  }));
  const until = epochMs(PLACED + hours * HOUR_MS);
  return measuredRelease(measuredStrength(placement, readings, until), { mixture, required });
};

describe('a release on measured strength', () => {
  it('needs readings: without any nothing is measured', () => {
    expect(measuredRelease(null, { mixture, required: psi(1000) })).toMatchObject({
      ok: false,
      measured: 'no temperature read',
      limit: 'at least 1000 psi by measured temperatures',
      text: expect.stringContaining('a prediction releases nothing'),
    });
  });

  it('is refused while it is short and given once it is there', () => {
    expect(after(6, 60)).toMatchObject({ ok: false, text: expect.stringContaining('keep it warm') });
    expect(after(96, 60)).toMatchObject({ ok: true, text: 'Strong enough by its measured temperatures' });
  });

  it('names its method, where that comes from and its caution, whatever it says', () => {
    fc.assert(
      fc.property(fc.integer({ min: 0, max: 200 }), fc.integer({ min: 20, max: 100 }), (hours, degrees) => {
        const { measured, source, caution } = after(hours, degrees);
        expect(measured).toMatch(/^\d+ psi by .*Nurse–Saul/);
        expect(source.text).toContain('ASTM C1074');
        expect('PCMT').toContain(source.mark);
        expect(caution).toBe(STRENGTH_CAUTION);
      }),
    );
  });

  it('never becomes refused again by more time and readings', () => {
    fc.assert(
      fc.property(fc.integer({ min: 6, max: 150 }), fc.integer({ min: 35, max: 90 }), (hours, degrees) => {
        if (after(hours, degrees).ok) expect(after(hours + 12, degrees).ok).toBe(true);
      }),
    );
  });
});
