import { describe, expect, it } from '@jest/globals';
import { standing } from './standing.js';

const ZONE = 'America/New_York';
const hookup = (more: object = {}) =>
  ({
    state: 'waiting',
    needs: [{ met: true }, { met: false }, { met: false }],
    bookedFor: null,
    bookedBy: null,
    doneAt: null,
    doneBy: null,
    energisedAt: null,
    ...more,
  }) as unknown as Parameters<typeof standing>[0];

describe('how a hookup stands', () => {
  it.each([
    [{}, 'Not ready yet: 2 of 3 needs are open.'],
    [{ needs: [{ met: false }] }, '1 of 1 needs is open'],
    [{ state: 'ready' }, 'Book a day'],
    [{ state: 'booked', bookedFor: '2031-01-08T05:00:00Z', bookedBy: 'Dana Quill' }, 'by Dana Quill'],
    [{ state: 'done', doneAt: '2031-01-08T15:00:00Z', doneBy: 'Dana Quill' }, 'Recorded by Dana Quill'],
    [{ state: 'done', doneAt: null }, 'Recorded.'],
    [{ state: 'done', energisedAt: '2031-02-08T15:00:00Z' }, 'energised'],
  ])('%j', (more, words) => {
    expect(standing(hookup(more), ZONE)).toContain(words);
  });

  it('tells nobody to come before it is ready', () => {
    expect(standing(hookup(), ZONE)).toContain('Do not come');
    expect(standing(hookup({ state: 'ready' }), ZONE)).not.toContain('Do not come');
  });
});
