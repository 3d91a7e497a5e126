import { describe, expect, it } from '@jest/globals';
import fc from 'fast-check';
import { checkedEntry } from '../../entry/testing/checked-entry.js';
import { wattsPerSquareFoot } from '../../units/electrical.js';
import { heatFlux, toHeatFlux } from '../../units/heat.js';
import { feet, inches, squareFeet } from '../../units/length.js';
import { fahrenheit } from '../../units/temperature.js';
import { hours } from '../../units/time.js';
import { alongTheWind, areaDemand, areaWarmUp } from './area-demand.js';
import { DESIGN_WEATHER, type DesignWeatherKey } from './design-weather.js';
import { slabLosses } from './losses.js';
import { meltingShare, millimetres, wattsPerSquareMetre } from './melting-share.js';
import { openEdge } from './open-edge.js';
import { capacityOf, resistanceOf, slabOf } from './slab.js';
import { warmUpTime } from './warm-up.js';

const entry = checkedEntry();
const [landing, steps, walk] = entry.areas as [never, never, never];
const every = Object.keys(DESIGN_WEATHER) as DesignWeatherKey[];

describe('what the areas of an entry ask for', () => {
  it.each(every)('is the sum of its parts in %s', (key) => {
    for (const area of entry.areas) {
      const found = areaDemand(area, entry, DESIGN_WEATHER[key], 0.5);
      const top = found.sensible + found.melting + found.convectionAndRadiation + found.evaporation;
      expect(found.top).toBeCloseTo(top, 8);
      expect(found.total).toBeCloseTo(top + found.back + found.edge, 8);
      expect(found.back).toBeGreaterThanOrEqual(0);
    }
  });

  // From memory: Adlam, 1950: back and edge lose from 4 to 50 % of what the top gives.
  it('loses at back and edges what the handbook has seen', () => {
    for (const area of entry.areas) {
      const { back, edge, top } = areaDemand(area, entry, DESIGN_WEATHER['handbook-example'], 0.5);
      expect((back + edge) / top).toBeGreaterThan(0.04);
      expect((back + edge) / top).toBeLessThan(0.5);
    }
  });

  it('has a second opinion that agrees within 5 % where the snow lies', () => {
    for (const key of every) {
      const { top, topByShortForm } = areaDemand(landing, entry, DESIGN_WEATHER[key], 0);
      expect(topByShortForm / top).toBeCloseTo(1, 1);
    }
  });

  it('is told with what it rests on', () => {
    const { sources } = areaDemand(walk, entry, DESIGN_WEATHER['mild-snow'], 0);
    expect(sources.map((source) => source.mark)).toEqual(['M', 'M', 'C', 'M', 'C']);
  });
});

describe('edges and lengths', () => {
  // Computed by hand from 60 × 84 in, three treads of 12 in, 12 ft × 48 in.
  it('are those of the measured areas', () => {
    expect([landing, steps, walk].map(openEdge)).toEqual([17, 6, 24]);
    expect([landing, steps, walk].map(alongTheWind)).toEqual([5, 3, 4]);
  });
});

describe('losses of a slab', () => {
  const slab = slabOf(walk, entry);

  // Computed by hand: 1 in of mortar at 1.2 and 1½ in of stone at 2.5 W/(m·K).
  it('rest on the resistances of its layers', () => {
    expect(resistanceOf(slab.above)).toBeCloseTo((1 / 12 / 1.2 + 1.5 / 12 / 2.5) / 0.57779, 4);
    expect(slab.below.map((layer) => layer.thickness)).toEqual([4, 12]);
    // 1 in of mortar: 2e6 J/(m³·K) are 29.82 Btu/ft³·°F, a twelfth of it on the square foot.
    expect(capacityOf(slab.above[0]!)).toBeCloseTo(29.82 / 12, 3);
  });

  it('are none downwards where the cable is no warmer than the ground', () => {
    const cold = slabLosses(heatFlux(0), slab, { open: feet(0), area: squareFeet(48) }, fahrenheit(20));
    expect([cold.cable, cold.back, cold.edge]).toEqual([33, 0, 0]);
  });

  it('need an area', () => {
    const edge = { open: feet(10), area: squareFeet(0) };
    expect(() => slabLosses(heatFlux(1), slab, edge, fahrenheit(20))).toThrow('more than 0 ft²');
  });

  it('stand over half the rise under a flight', () => {
    expect(slabOf(steps, entry).below[0]?.thickness).toBe(inches(15));
  });
});

describe('warming up', () => {
  const slab = slabOf(landing, entry);
  const cold = fahrenheit(20);

  it('takes no time when it is warm', () => {
    expect(warmUpTime(slab, fahrenheit(33), heatFlux(100), heatFlux(10))).toBe(0);
  });

  it('never comes to an end with less power than is lost', () => {
    expect(warmUpTime(slab, cold, heatFlux(30), heatFlux(30))).toBeNull();
    expect(areaWarmUp(landing, entry, DESIGN_WEATHER['hard-snow'], wattsPerSquareFoot(10))).toBeNull();
  });

  // Computed by hand: without a loss all the power is stored.
  it('without a loss takes the heat that is stored over the power', () => {
    const plain = { above: [slab.above[0]!], below: [] };
    const power = heatFlux(100);
    const middle = 33 + (100 * resistanceOf(plain.above)) / 2 - cold;
    const stored = capacityOf(plain.above[0]!) * middle;
    expect(warmUpTime(plain, cold, power, heatFlux(0))).toBeCloseTo(stored / 100, 8);
    expect(warmUpTime(plain, cold, power, heatFlux(1e-6))).toBeCloseTo(stored / 100, 5);
  });

  it('is sooner from warmer and longer with more loss', () => {
    fc.assert(
      fc.property(
        fc.double({ min: 80, max: 300, noNaN: true }),
        fc.double({ min: 1, max: 70, noNaN: true }),
        fc.double({ min: -10, max: 30, noNaN: true }),
        (power, loss, start) => {
          const time = (from: number, lost: number) =>
            warmUpTime(slab, fahrenheit(from), heatFlux(power), heatFlux(lost)) ?? Infinity;
          expect(time(start + 1, loss)).toBeLessThan(time(start, loss));
          expect(time(start, loss + 1)).toBeGreaterThan(time(start, loss));
        },
      ),
    );
  });

  it('of a landing at 40 W/ft² takes some hours', () => {
    const time = areaWarmUp(landing, entry, DESIGN_WEATHER['cold-snow'], wattsPerSquareFoot(40));
    expect(time).toBeGreaterThan(0.5);
    expect(time).toBeLessThan(12);
    expect(toHeatFlux(wattsPerSquareFoot(40))).toBeCloseTo(136.5, 1);
  });
});

describe('the share that melts', () => {
  it('needs heat', () => {
    expect(() => meltingShare(millimetres(3), wattsPerSquareMetre(0), hours(2))).toThrow('more than 0');
  });
});
