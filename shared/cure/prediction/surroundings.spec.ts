import { describe, expect, it } from '@jest/globals';
import { fahrenheit, toCelsius } from '../../units/temperature.js';
import { milesPerHour } from '../../units/weather-units.js';
import { NO_PROTECTION } from '../protection/protection-plan.js';
import { airOf, tentPlan } from '../testing/cure-fixture.js';
import { after } from '../testing/placement-fixture.js';
import { filmResistance, STILL_FILM } from '../thermal/surface-film.js';
import { AirByHour } from './air-by-hour.js';
import { surroundingsAt } from './surroundings.js';

const at = (hour: number, plan = tentPlan(), air = airOf(24, () => 20)) =>
  surroundingsAt(plan, new AirByHour(air, null), after(0), after(hour));

describe('what a face meets', () => {
  it('in the open is the air and its wind', () => {
    const open = at(3, NO_PROTECTION)!;
    expect(open.beside).toBeCloseTo(toCelsius(fahrenheit(20)), 9);
    expect(open.resistance).toBeCloseTo(filmResistance(milesPerHour(8)), 9);
    expect(open).toMatchObject({ outside: 20, known: true });
  });

  it('in a tent is the air inside, still', () => {
    const tent = at(3)!;
    expect(tent.beside).toBeCloseTo(toCelsius(fahrenheit(60)), 9);
    expect(tent.resistance).toBeCloseTo(STILL_FILM, 9);
    expect(tent.outside).toBe(20);
  });

  it('under blankets is the air through them: two layers of R 4', () => {
    const covered = at(13)!;
    expect(covered.resistance).toBeCloseTo(8 * 0.176110184 + filmResistance(milesPerHour(8)), 6);
  });

  it('is never cooled by a heater: warmer air outside counts', () => {
    expect(
      at(
        3,
        tentPlan(),
        airOf(24, () => 75),
      )!.beside,
    ).toBeCloseTo(toCelsius(fahrenheit(75)), 9);
  });

  it('is unknown in unknown air, but known inside a tent', () => {
    expect(at(3, NO_PROTECTION, [])).toBeNull();
    expect(at(3, tentPlan(), [])).toMatchObject({ outside: null, known: false });
    expect(at(13, tentPlan(), [])).toBeNull();
  });
});
