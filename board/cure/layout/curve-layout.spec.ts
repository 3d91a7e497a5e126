import { describe, expect, it } from '@jest/globals';
import fc from 'fast-check';
import { type CoursePoint, FIELD, layOutCurve } from './curve-layout.js';

const HOUR = 3_600_000;
const point = (
  hour: number,
  basis: CoursePoint['basis'],
  temperatureF: number,
  psi: number,
): CoursePoint => ({ at: hour * HOUR, basis, temperatureF, psi });

const COURSE = [
  point(0, 'measured', 62, 0),
  point(2, 'measured', 60, 0),
  point(4, 'predicted', 58, 200),
  point(12, 'predicted', 50, 1100),
];

describe('the drawing of a cure', () => {
  it('draws what was measured as one line and goes on from its last point where it is predicted', () => {
    const { temperature } = layOutCurve(COURSE, 1000, 3 * HOUR);
    const [first, second] = temperature.measured.slice(1).split('L');
    expect(first).toMatch(new RegExp(`^${FIELD.left} `));
    expect(temperature.predicted.slice(1).split('L')[0]).toBe(second);
    expect(temperature.predicted.split('L')).toHaveLength(3);
    expect(temperature.marks).toHaveLength(2);
  });

  it('draws warm over cold and strong over weak', () => {
    const { temperature, strength } = layOutCurve(COURSE, 1000, 0);
    const heights = (path: string) =>
      path
        .slice(1)
        .split('L')
        .map((pair) => Number(pair.split(' ')[1]));
    const [warm = 0, , cold = 0] = heights(temperature.predicted);
    expect(warm).toBeLessThan(cold);
    const [weak = 0, , strong = 0] = heights(strength.predicted);
    expect(strong).toBeLessThan(weak);
  });

  it('has levels for freezing, for 500 psi and for the strength that is needed, once where they agree', () => {
    const levels = (psi: number) => layOutCurve(COURSE, psi, 0).strength.levels.map(({ value }) => value);
    expect(layOutCurve(COURSE, 1000, 0).temperature.levels.map(({ value }) => value)).toEqual([32]);
    expect(levels(1000)).toEqual([500, 1000]);
    expect(levels(500)).toEqual([500]);
  });

  it('marks the present only where it lies within', () => {
    expect(layOutCurve(COURSE, 1000, 6 * HOUR).nowX).toBe(
      FIELD.left + (FIELD.width - FIELD.left - FIELD.right) / 2,
    );
    expect(layOutCurve(COURSE, 1000, 13 * HOUR).nowX).toBeNull();
  });

  it('keeps everything within its field, whatever the course', () => {
    fc.assert(
      fc.property(
        fc.array(
          fc.record({
            hour: fc.integer({ min: 0, max: 400 }),
            temperatureF: fc.double({ min: -40, max: 200, noNaN: true }),
            psi: fc.double({ min: 0, max: 6000, noNaN: true }),
          }),
          { minLength: 1, maxLength: 60 },
        ),
        fc.integer({ min: 0, max: 10_000 }),
        (given, required) => {
          const points = given
            .sort((a, b) => a.hour - b.hour)
            .map(({ hour, ...rest }) => ({ at: hour * HOUR, basis: 'predicted' as const, ...rest }));
          const { temperature, strength, hours, width } = layOutCurve(points, required, 0);
          for (const field of [temperature, strength]) {
            for (const pair of field.predicted.slice(1).split('L').filter(Boolean)) {
              const [x = NaN, y = NaN] = pair.split(' ').map(Number);
              expect(x).toBeGreaterThanOrEqual(FIELD.left);
              expect(x).toBeLessThanOrEqual(width - FIELD.right + 0.05);
              expect(y).toBeGreaterThanOrEqual(field.top - 0.05);
              expect(y).toBeLessThanOrEqual(field.top + FIELD.height + 0.05);
            }
            expect(field.ticks.length).toBeLessThanOrEqual(8);
          }
          expect(hours.length).toBeLessThanOrEqual(10);
        },
      ),
    );
  });

  it('draws a single point without a line, and a course of nothing without a fault', () => {
    expect(layOutCurve([point(0, 'measured', 60, 0)], 1000, 0).temperature).toMatchObject({
      measured: '',
      predicted: '',
      marks: [expect.anything()],
    });
    expect(layOutCurve([], 1000, 0).temperature.measured).toBe('');
  });
});
