import { describe, expect, it } from '@jest/globals';
import { momentOfWall, wallTime } from './wall-time.js';

const ZONE = 'America/New_York';

describe('the wall clock of a zone', () => {
  it('goes there and back', () => {
    const moment = Date.parse('2031-01-07T13:15:00Z');
    expect(wallTime(moment, ZONE)).toBe('2031-01-07T08:15');
    expect(momentOfWall('2031-01-07T08:15', ZONE)).toBe(moment);
  });

  it('takes the hour that daylight time skips as the one after, and of the one that comes twice the first', () => {
    // 15 U.S.C. 260a: 9 March 2031 at 2 a.m. the clocks go forward, 2 November 2031 at 2 a.m. back.
    expect(momentOfWall('2031-03-09T02:30', ZONE)).toBe(Date.parse('2031-03-09T07:30:00Z'));
    expect(momentOfWall('2031-11-02T01:30', ZONE)).toBe(Date.parse('2031-11-02T05:30:00Z'));
  });

  it.each(['', 'soon', '2031-13-01T08:00'])('is none in "%s"', (text) => {
    expect(momentOfWall(text, ZONE)).toBeNull();
  });
});
