import { describe, expect, it } from '@jest/globals';
import { photoOutcome, photoQuery } from './deliver-photo.js';

describe('a photo on its way', () => {
  it('tells in its address what it is, under its key, and leaves out what was not told', () => {
    const input = {
      phaseId: 'f1',
      holdPointId: null,
      caption: 'Frost & rock, 50 in',
      takenAt: '2031-01-06T14:00:00Z',
    };
    const query = photoQuery({ key: 'k1', input });
    expect(String(query)).toBe(
      'phaseId=f1&caption=Frost+%26+rock%2C+50+in&takenAt=2031-01-06T14%3A00%3A00Z&clientKey=k1&fromOutbox=true',
    );
  });

  it.each([
    [201, { answer: 'applied' }, 'done', 'Recorded.'],
    [200, { answer: 'alreadyApplied' }, 'done', 'It was on record already.'],
    [401, { message: 'Sign in first.' }, 'signed-out', 'Sign in first.'],
    [403, { message: 'Not for viewers.' }, 'refused', 'Not for viewers.'],
    [404, { message: 'No such phase.' }, 'refused', 'No such phase.'],
    [413, {}, 'refused', 'The service did not take this photo. Take it again.'],
    [422, { message: 'Damaged.' }, 'refused', 'Damaged.'],
    [408, {}, 'failed', 'Something went wrong in the service. It is tried again.'],
    [429, {}, 'failed', 'Something went wrong in the service. It is tried again.'],
    [500, {}, 'failed', 'Something went wrong in the service. It is tried again.'],
    [502, {}, 'failed', 'Something went wrong in the service. It is tried again.'],
  ] as const)('that is answered with %d %j is %s', (status, answer, state, message) => {
    expect(photoOutcome(status, answer)).toMatchObject({ state, message });
  });
});
