import { describe, expect, it } from '@jest/globals';
import { linkIdIn, linkPath, pagePath } from './link-address.js';

describe('the addresses of signed links', () => {
  it('hold the token where they are sent and the id where they lead', () => {
    expect(linkPath('token')).toBe('/links/token');
    expect(pagePath({ id: 'a-b', purpose: 'hookup' })).toBe('/sheet/a-b');
    expect(pagePath({ id: 'a-b', purpose: 'ownerWeek' })).toBe('/week/a-b');
  });

  it.each([
    ['/sheet/a-b', 'a-b'],
    ['/week/a-b', 'a-b'],
    ['/week/', ''],
    ['/week', null],
    ['/weeks/a-b', null],
    ['/sheet/a-b/photos/c', null],
    ['/links/token', null],
    ['/', null],
  ])('are pages: %s', (path, id) => {
    expect(linkIdIn(path)).toBe(id);
  });
});
