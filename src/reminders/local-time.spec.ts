import { describe, expect, test } from '@jest/globals';
import { atHour, inWorkingDay, plusHours } from './local-time.js';

const zone = 'America/New_York';
const at = (iso: string) => new Date(iso);

describe('an hour of a day', () => {
  test('is read in the zone of the site', () => {
    // 02:00 UTC on the 7th is still the 6th in New York.
    expect(atHour(zone, at('2031-01-07T02:00:00Z'), 7)).toEqual(at('2031-01-06T07:00:00-05:00'));
    expect(atHour(zone, at('2031-01-07T02:00:00Z'), 14, -1)).toEqual(at('2031-01-05T14:00:00-05:00'));
  });

  // The United States change clocks on 2031-03-09 and 2031-11-02. Source: IANA time zone database, rule US.
  test('stays the same hour on the wall across a clock change', () => {
    expect(atHour(zone, at('2031-03-10T12:00:00Z'), 7, -2)).toEqual(at('2031-03-08T07:00:00-05:00'));
    expect(atHour(zone, at('2031-03-10T12:00:00Z'), 7, -1)).toEqual(at('2031-03-09T07:00:00-04:00'));
    expect(atHour(zone, at('2031-11-02T18:00:00Z'), 7)).toEqual(at('2031-11-02T07:00:00-05:00'));
  });
});

describe('hours by the clock', () => {
  test('do not know clock changes', () => {
    expect(plusHours(at('2031-03-09T01:00:00-05:00'), 24)).toEqual(at('2031-03-10T02:00:00-04:00'));
  });
});

describe('a time within the working day', () => {
  test.each([
    ['2031-01-06T05:59:00-05:00', '2031-01-06T07:00:00-05:00'],
    ['2031-01-06T06:00:00-05:00', '2031-01-06T06:00:00-05:00'],
    ['2031-01-06T17:59:00-05:00', '2031-01-06T17:59:00-05:00'],
    ['2031-01-06T18:00:00-05:00', '2031-01-07T07:00:00-05:00'],
    ['2031-01-06T23:30:00-05:00', '2031-01-07T07:00:00-05:00'],
  ])('for %s is %s', (instant, expected) => {
    expect(inWorkingDay(zone, at(instant))).toEqual(at(expected));
  });
});
