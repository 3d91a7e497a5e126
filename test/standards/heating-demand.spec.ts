import { describe, expect, it } from '@jest/globals';
import { DESIGN_WEATHER } from '../../shared/heating/demand/design-weather.js';
import { dewPoint } from '../../shared/heating/demand/dew-point.js';
import { FREE_AREA_SOURCE, freeAreaRatio } from '../../shared/heating/demand/free-area.js';
import { meltingHeat, sensibleHeat } from '../../shared/heating/demand/melting-heat.js';
import { meltingShare, millimetres, wattsPerSquareMetre } from '../../shared/heating/demand/melting-share.js';
import { saturationPressure } from '../../shared/heating/demand/saturation-pressure.js';
import { shortForm, SHORT_FORM_SOURCE } from '../../shared/heating/demand/short-form.js';
import { BALANCE_SOURCE, surfaceDemand } from '../../shared/heating/demand/surface-demand.js';
import { convectionAndRadiation, evaporation } from '../../shared/heating/demand/surface-heat.js';
import { inchesPerHour } from '../../shared/units/heat.js';
import { feet } from '../../shared/units/length.js';
import { celsius, fahrenheit, toFahrenheit } from '../../shared/units/temperature.js';
import { hours } from '../../shared/units/time.js';
import { milesPerHour, percent } from '../../shared/units/weather-units.js';

const within = (found: number, expected: number, share: number) =>
  expect(Math.abs(found / expected - 1)).toBeLessThanOrEqual(share);

// From memory: ASHRAE Handbook, HVAC Applications, worked example of snow melting; sums computed by hand. Within 2 %.
describe('17 °F, dew point 14 °F, 19.6 mph, 0.10 in/h, 20 ft long', () => {
  const weather = DESIGN_WEATHER['handbook-example'];
  const along = feet(20);

  it('takes 4.34 to warm and 74.5 to melt', () => {
    within(sensibleHeat(weather), 4.34, 0.02);
    within(meltingHeat(weather), 74.5, 0.02);
  });

  it('loses 94.2 by convection and radiation and 51.3 by evaporation where it is bare', () => {
    within(convectionAndRadiation(weather, along), 94.2, 0.02);
    within(evaporation(weather, along), 51.3, 0.02);
  });

  it.each([
    [0, 78.9],
    [0.5, 151.6],
    [1, 224.3],
  ])('with a free-area ratio of %p asks %p Btu/h·ft²', (ratio, total) => {
    within(surfaceDemand(weather, ratio, along).total, total, 0.02);
  });

  it('is marked as recalled', () => {
    expect([weather.source.mark, BALANCE_SOURCE.mark]).toEqual(['M', 'M']);
  });
});

// From memory: Chapman's short form; sums computed by hand. Within 1 %.
describe('the short form at 0.10 in/h, 20 °F, 10 mph, 80 %', () => {
  const air = fahrenheit(20);
  const weather = {
    name: 'short form',
    air,
    dewPoint: dewPoint(air, percent(80)),
    wind: milesPerHour(10),
    snow: inchesPerHour(0.1),
    source: SHORT_FORM_SOURCE,
  };

  it.each([
    [0, 77.7],
    [0.5, 110.8],
    [1, 143.9],
  ])('with a free-area ratio of %p asks %p Btu/h·ft²', (ratio, total) => {
    within(shortForm(weather, ratio).total, total, 0.01);
  });
});

// Source: HPAC (published), classes of snow melting.
describe('free-area classes', () => {
  it.each([
    ['I', 0],
    ['II', 0.5],
    ['III', 1],
  ])('%s keeps %p of the surface bare', (word, ratio) => {
    expect(freeAreaRatio(word)).toBe(ratio);
    expect(FREE_AREA_SOURCE.mark).toBe('P');
  });
});

// Source: Advances in Materials Science and Engineering 2020, 5209350 (published); computed by hand. Within 2 %.
describe('3.2 mm of water melted by 350 W/m² in 2 h', () => {
  it('used 0.424 of the heat', () => {
    within(meltingShare(millimetres(3.2), wattsPerSquareMetre(350), hours(2)), 0.424, 0.02);
  });
});

// From memory: tables of saturation pressure of water and ice, as any handbook of physics prints them. Within 0.1 %.
describe('saturation pressure', () => {
  it.each([
    [-20, 103.2],
    [-10, 259.9],
    [0, 611.2],
    [20, 2339],
    [100, 101_419],
  ])('at %p °C is %p Pa', (temperature, pressure) => {
    within(saturationPressure(toFahrenheit(celsius(temperature))), pressure, 0.001);
  });
});
