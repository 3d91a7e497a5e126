import { describe, expect, it } from '@jest/globals';
import fc from 'fast-check';
import { inchesPerHour } from '../../units/heat.js';
import { feet } from '../../units/length.js';
import { fahrenheit } from '../../units/temperature.js';
import { milesPerHour, percent } from '../../units/weather-units.js';
import { DESIGN_WEATHER, type DesignWeather } from './design-weather.js';
import { dewPoint } from './dew-point.js';
import { freeAreaRatio } from './free-area.js';
import { shortForm } from './short-form.js';
import { surfaceDemand } from './surface-demand.js';
import { convection, radiation } from './surface-heat.js';

const snowfall = (more: Partial<DesignWeather> = {}): DesignWeather => ({
  ...DESIGN_WEATHER['cold-snow'],
  ...more,
});
const anySnow = fc
  .record({
    air: fc.double({ min: -20, max: 32, noNaN: true }),
    below: fc.double({ min: 0, max: 15, noNaN: true }),
    wind: fc.double({ min: 1, max: 40, noNaN: true }),
    snow: fc.double({ min: 0, max: 0.4, noNaN: true }),
  })
  .map(({ air, below, wind, snow }) =>
    snowfall({
      air: fahrenheit(air),
      dewPoint: fahrenheit(air - below),
      wind: milesPerHour(wind),
      snow: inchesPerHour(snow),
    }),
  );
const ratios = fc.double({ min: 0, max: 1, noNaN: true });
const lengths = fc.double({ min: 2, max: 60, noNaN: true });

describe('the heat a surface asks for', () => {
  it('is the sum of its parts, by both forms', () => {
    fc.assert(
      fc.property(anySnow, ratios, lengths, (weather, ratio, length) => {
        for (const found of [surfaceDemand(weather, ratio, feet(length)), shortForm(weather, ratio)]) {
          const bare = found.convectionAndRadiation + found.evaporation;
          expect(found.total).toBeCloseTo(found.sensible + found.melting + ratio * bare, 8);
          for (const part of [found.sensible, found.melting, found.evaporation])
            expect(part).toBeGreaterThanOrEqual(0);
        }
      }),
    );
  });

  it('never falls with more snow, more wind, colder air or more of it bare', () => {
    fc.assert(
      fc.property(anySnow, ratios, lengths, (weather, ratio, length) => {
        const asked = (changed: DesignWeather, share = ratio) =>
          surfaceDemand(changed, share, feet(length)).total + 1e-9;
        const now = surfaceDemand(weather, ratio, feet(length)).total;
        expect(asked({ ...weather, snow: inchesPerHour(weather.snow + 0.1) })).toBeGreaterThan(now);
        expect(asked({ ...weather, wind: milesPerHour(weather.wind + 5) })).toBeGreaterThanOrEqual(now);
        const colder = { air: fahrenheit(weather.air - 5), dewPoint: fahrenheit(weather.dewPoint - 5) };
        expect(asked({ ...weather, ...colder })).toBeGreaterThanOrEqual(now);
        expect(asked(weather, 1)).toBeGreaterThanOrEqual(now);
      }),
    );
  });

  it('is more on each square foot of a short surface than of a long one', () => {
    expect(convection(milesPerHour(10), feet(4))).toBeGreaterThan(convection(milesPerHour(10), feet(20)));
  });

  it('is lost to the clouds even when the air is as warm as the film', () => {
    expect(radiation(fahrenheit(33))).toBeGreaterThan(0);
  });

  it.each([
    [snowfall({ air: fahrenheit(34), dewPoint: fahrenheit(30) }), 'air of 33 °F or colder, got 34'],
    [snowfall({ dewPoint: fahrenheit(21) }), 'dew point (21 °F) cannot lie above the air (20 °F)'],
    [snowfall({ wind: milesPerHour(-1) }), 'cannot be less than nothing, got -1 mph'],
    [snowfall({ snow: inchesPerHour(-0.1) }), 'and -0.1 in/h'],
  ])('is not told for weather without snow (%#)', (weather, message) => {
    expect(() => surfaceDemand(weather, 0, feet(5))).toThrow(message);
    expect(() => shortForm(weather, 0)).toThrow(message);
  });

  it.each([-0.01, 1.01, Number.NaN])('is not told for a free-area ratio of %p', (ratio) => {
    expect(() => surfaceDemand(snowfall(), ratio, feet(5))).toThrow('from 0 to 1');
    expect(() => shortForm(snowfall(), ratio)).toThrow('from 0 to 1');
  });

  it('needs a length in the wind', () => {
    expect(() => surfaceDemand(snowfall(), 1, feet(0))).toThrow('must be more than 0 ft');
  });

  it('knows three classes and says so', () => {
    expect(() => freeAreaRatio('IV')).toThrow('there is no class "IV"; use I');
    expect(() => freeAreaRatio('toString')).toThrow('there is no class');
  });
});

describe('the dew point', () => {
  it('is the air at 100 % and falls with the humidity', () => {
    fc.assert(
      fc.property(
        fc.double({ min: -20, max: 90, noNaN: true }),
        fc.double({ min: 5, max: 99, noNaN: true }),
        (air, humidity) => {
          expect(dewPoint(fahrenheit(air), percent(100))).toBeCloseTo(air, 6);
          const found = dewPoint(fahrenheit(air), percent(humidity));
          expect(found).toBeLessThan(air);
          expect(dewPoint(fahrenheit(air), percent(humidity + 1))).toBeGreaterThanOrEqual(found);
        },
      ),
    );
  });

  it.each([0, -5, 101, Number.NaN])('is refused at %p %%', (humidity) => {
    expect(() => dewPoint(fahrenheit(40), humidity as never)).toThrow('above 0 and at most 100');
  });
});
