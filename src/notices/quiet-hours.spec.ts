import { describe, expect, test } from '@jest/globals';
import { notBefore } from './not-before.js';
import { quietUntil } from './quiet-hours.js';

const night = { zone: 'America/New_York', quietFrom: '21:00', quietTo: '06:30' };
const at = (iso: string) => new Date(iso);

describe('quiet hours over midnight', () => {
  test.each([
    ['before they begin', '2031-01-06T20:59:00-05:00', null],
    ['at their beginning', '2031-01-06T21:00:00-05:00', '2031-01-07T06:30:00-05:00'],
    ['in the evening', '2031-01-06T23:00:00-05:00', '2031-01-07T06:30:00-05:00'],
    ['after midnight', '2031-01-07T03:00:00-05:00', '2031-01-07T06:30:00-05:00'],
    ['at their end', '2031-01-07T06:30:00-05:00', null],
    ['at noon', '2031-01-07T12:00:00-05:00', null],
  ])('%s', (_, instant, until) => {
    expect(quietUntil(night, at(instant))).toEqual(until === null ? null : at(until));
  });
});

describe('quiet hours', () => {
  test('within one day end on that day', () => {
    const noon = { ...night, quietFrom: '12:00', quietTo: '13:00' };
    expect(quietUntil(noon, at('2031-01-06T12:15:00-05:00'))).toEqual(at('2031-01-06T13:00:00-05:00'));
    expect(quietUntil(noon, at('2031-01-06T13:00:00-05:00'))).toBeNull();
  });

  test('are read in the zone of the person, not of the office', () => {
    const west = { ...night, zone: 'America/Los_Angeles' };
    expect(quietUntil(west, at('2031-01-06T23:00:00-05:00'))).toBeNull();
    expect(quietUntil(west, at('2031-01-07T01:00:00-05:00'))).toEqual(at('2031-01-07T06:30:00-08:00'));
  });

  test('are none when they are not set, or begin when they end', () => {
    const evening = at('2031-01-06T23:00:00-05:00');
    expect(quietUntil({ ...night, quietFrom: null }, evening)).toBeNull();
    expect(quietUntil({ ...night, quietTo: null }, evening)).toBeNull();
    expect(quietUntil({ ...night, quietTo: '21:00' }, evening)).toBeNull();
  });

  // The United States change clocks on 2031-03-09 and 2031-11-02 at 2:00. Source: IANA time zone database, rule US.
  test('end by the clock on the wall in the nights of a clock change', () => {
    expect(quietUntil(night, at('2031-03-08T23:00:00-05:00'))).toEqual(at('2031-03-09T06:30:00-04:00'));
    expect(quietUntil(night, at('2031-11-01T23:00:00-04:00'))).toEqual(at('2031-11-02T06:30:00-05:00'));
  });
});

describe('the earliest time of sending', () => {
  const evening = at('2031-01-06T23:00:00-05:00');
  const morning = at('2031-01-07T06:30:00-05:00');

  test('is the end of the quiet hours', () => {
    expect(notBefore(night, evening, { urgent: false, usefulUntil: null })).toEqual(morning);
  });

  test('is now for urgent messages', () => {
    expect(notBefore(night, evening, { urgent: true, usefulUntil: null })).toBeNull();
  });

  test('is now when waiting would make the message useless', () => {
    const usefulUntil = at('2031-01-07T06:30:00-05:00');
    expect(notBefore(night, evening, { urgent: false, usefulUntil })).toBeNull();
    const later = at('2031-01-07T07:00:00-05:00');
    expect(notBefore(night, evening, { urgent: false, usefulUntil: later })).toEqual(morning);
  });
});
