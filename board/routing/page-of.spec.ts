import { describe, expect, it } from '@jest/globals';
import { homeOf, pageOf } from './page-of.js';

describe('the page of an address', () => {
  it.each([
    ['/', { page: 'board' }],
    ['/site', { page: 'site' }],
    ['/sign-in', { page: 'sign-in' }],
    ['/jobs/new', { page: 'entering' }],
    ['/jobs/104', { page: 'job', number: 104 }],
    ['/jobs/104/design', { page: 'design', number: 104 }],
    ['/hookups/0a-b', { page: 'hookup', id: '0a-b' }],
    ['/sheet/0a-b', { page: 'sheet', linkId: '0a-b' }],
    ['/week/0a-b', { page: 'week', linkId: '0a-b' }],
    ['/sheet/0a-b/more', { page: 'unknown' }],
    ['/jobs/abc', { page: 'unknown' }],
    ['/jobs/104/more', { page: 'unknown' }],
    ['/elsewhere', { page: 'unknown' }],
  ])('%s', (path, page) => {
    expect(pageOf(path)).toEqual(page);
  });

  it('is the page of the day after signing in', () => {
    expect(['office', 'foreman', 'crew', 'electrician', 'viewer'].map(homeOf)).toEqual([
      '/',
      '/site',
      '/site',
      '/',
      '/',
    ]);
  });
});
