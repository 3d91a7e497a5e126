import { describe, expect, it } from '@jest/globals';
import { FREEZE_THAW_LIMIT } from '../../shared/weather/freeze-thaw-limit.js';
import { celsius, toFahrenheit } from '../../shared/units/temperature.js';
import { h, inHours, temperatures } from '../../shared/weather/testing/hour-values.js';
import { weatherWindows } from '../../shared/weather/weather-windows.js';

/** Hours in which the limit closes the work, by the temperatures of an hour each in °C. */
const closed = (...degrees: readonly number[]) => {
  const forecast = temperatures(...degrees.map((t) => toFahrenheit(celsius(t))));
  return inHours(weatherWindows([FREEZE_THAW_LIMIT], forecast, h(0), h(degrees.length)).closed);
};

// Source: NHBC Standards 3.2 (published): stop at 3 °C and falling, resume at 1 °C and rising if 3 °C is expected.
describe('stopping and resuming', () => {
  it('stops at 3 °C and falling', () => {
    expect(closed(5, 4, 3, 2)).toEqual([[2, 4]]);
  });

  it('does not stop at 3.1 °C and falling', () => {
    expect(closed(5, 4, 3.1)).toEqual([]);
  });

  it('keeps running at 3 °C and rising', () => {
    expect(closed(4, 5, 4, 3.5, 3.6, 4)).toEqual([]);
  });

  it('resumes at 1 °C and rising towards 4 °C', () => {
    expect(closed(4, 3, 1, 0, 1, 2, 4)).toEqual([[1, 4]]);
  });

  it('stays stopped at 1 °C and rising towards 2 °C', () => {
    expect(closed(4, 3, 1, 0, 1, 2, 2, 2, 1, 1, 1, 1)).toEqual([[1, 12]]);
  });

  it('stays stopped below 1 °C, though it rises towards 4 °C', () => {
    expect(closed(4, 3, 0, -1, 0, 0.9, 2, 4)).toEqual([[1, 6]]);
  });

  it('stays stopped at 2 °C and falling', () => {
    expect(closed(4, 3, 2, 1.5, 1.2)).toEqual([[1, 5]]);
  });

  it('is published', () => {
    expect(FREEZE_THAW_LIMIT.source).toMatchObject({
      mark: 'P',
      text: expect.stringContaining('NHBC Standards 3.2'),
    });
  });
});
