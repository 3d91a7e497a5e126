import { describe, expect, it } from '@jest/globals';
import fc from 'fast-check';
import { CHART_HEIGHT, CHART_WIDTH, drawChart, niceScale } from './chart.js';

const chart = (
  points: readonly (readonly [number, number])[],
  levels: readonly (readonly [number, string])[] = [],
) => drawChart({ title: 'A', lines: [{ points, marked: true }], levels, xWords: String, yWords: String });

describe('a scale', () => {
  it.each([
    [
      [18.52, 18.85],
      [18.5, 18.9, 0.1],
    ],
    [
      [0, 2306],
      [0, 3000, 1000],
    ],
    [
      [32, 72],
      [30, 80, 10],
    ],
    [
      [60, 60],
      [59.5, 60.5, 0.5],
    ],
    [
      [-4, 41],
      [-20, 60, 20],
    ],
  ])('of %j is %j', (values, wanted) => {
    niceScale(values).forEach((value, i) => expect(value).toBeCloseTo(wanted[i]!, 9));
  });

  it('holds all values, with few steps', () => {
    const number = fc.double({ min: -1e5, max: 1e5, noNaN: true });
    fc.assert(
      fc.property(fc.array(number, { minLength: 1, maxLength: 20 }), (values) => {
        const [least, most] = [Math.min(...values), Math.max(...values)];
        fc.pre(most === least || most - least > 1e-3);
        const [low, high, step] = niceScale(values);
        expect(low).toBeLessThanOrEqual(least + step * 1e-6);
        expect(high).toBeGreaterThanOrEqual(most - step * 1e-6);
        expect((high - low) / step).toBeLessThanOrEqual(6 + 1e-6);
      }),
    );
  });
});

describe('a chart', () => {
  it('has nothing to draw of a single point', () => {
    expect(chart([[0, 1]])).toBeNull();
    expect(chart([])).toBeNull();
  });

  it('keeps its course and its marks inside its field', () => {
    const number = fc.double({ min: -1000, max: 1000, noNaN: true });
    fc.assert(
      fc.property(fc.array(fc.tuple(number, number), { minLength: 2, maxLength: 30 }), (points) => {
        const svg = chart(points) ?? '';
        for (const [, x, y] of svg.matchAll(/cx="([\d.-]+)" cy="([\d.-]+)"/g)) {
          expect(Number(x)).toBeGreaterThan(0);
          expect(Number(x)).toBeLessThan(CHART_WIDTH);
          expect(Number(y)).toBeGreaterThanOrEqual(0);
          expect(Number(y)).toBeLessThan(CHART_HEIGHT);
        }
        expect(svg).not.toContain('NaN');
      }),
    );
  });

  it('draws a limit across with its words, and makes room for it', () => {
    const svg =
      chart(
        [
          [0, 50],
          [10, 60],
        ],
        [[32, '32 °F, freezing']],
      ) ?? '';
    expect(svg).toContain('32 °F, freezing');
    expect(svg).toContain('>30</text>');
  });
});
