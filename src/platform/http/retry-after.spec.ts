import { describe, expect, it } from '@jest/globals';
import { retryAfter } from './retry-after.js';

/* Forms by RFC 9110, section 10.2.3: a number of seconds or an HTTP date. */

const NOW = new Date('1999-12-31T23:58:59Z');

describe('the wait a server asks for', () => {
  it.each([
    ['120', 120_000],
    ['0', 0],
    [' 5 ', 5000],
    // The two examples of the section: 120 seconds, and a date which is a minute from now here.
    ['Fri, 31 Dec 1999 23:59:59 GMT', 60_000],
    ['Fri, 31 Dec 1999 23:00:00 GMT', 0],
  ])('of %p is %p ms', (header, milliseconds) => {
    expect(retryAfter(header, NOW)).toBe(milliseconds);
  });

  it.each([null, '', '-1', '1.5', 'soon', '2031-01-06', '31 Dec 1999'])('is not in %p', (header) => {
    expect(retryAfter(header, NOW)).toBeNull();
  });

  it('is a day at most: a slip of the server must not silence a site for weeks', () => {
    expect(retryAfter('99999999', NOW)).toBe(86_400_000);
    expect(retryAfter('Fri, 31 Dec 2099 23:59:59 GMT', NOW)).toBe(86_400_000);
  });
});
