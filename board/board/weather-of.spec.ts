import { describe, expect, it } from '@jest/globals';
import { withAnswer, type WeatherAnswer } from './weather-of.js';

const answer = (from: string, ...ids: string[]): WeatherAnswer => ({
  from,
  to: '2031-02-01T05:00:00Z',
  jobs: ids.map((id) => ({ id, site: { id: `site of ${id}`, forecast: null, weatherWindows: [] } })),
});
const NONE = { from: '', of: new Map() };

describe('the weather of the jobs', () => {
  it('grows with each answer about the same days', () => {
    const first = withAnswer(NONE, answer('2031-01-13T05:00:00Z', 'a', 'b'));
    const second = withAnswer(first, answer('2031-01-13T05:00:00Z', 'c'));
    expect([...second.of.keys()]).toEqual(['a', 'b', 'c']);
  });

  it('forgets what was known of other days', () => {
    const first = withAnswer(NONE, answer('2031-01-13T05:00:00Z', 'a'));
    expect([...withAnswer(first, answer('2031-01-20T05:00:00Z', 'b')).of.keys()]).toEqual(['b']);
  });
});
