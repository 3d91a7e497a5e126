import { describe, expect, it } from '@jest/globals';
import { photoWords } from './photo-words.js';

const ZONE = 'America/New_York';
const takenAt = '2031-01-06T13:30:00Z';

describe('a photo in words', () => {
  it('has its caption first, then phase and moment', () => {
    expect(photoWords({ caption: 'Below frost', takenAt }, 'Dig', ZONE)).toBe(
      'Below frost (Dig, Mon 6 Jan 08:30)',
    );
  });

  it('has phase and moment where nobody wrote a caption', () => {
    expect(photoWords({ caption: null, takenAt }, 'Dig', ZONE)).toBe('Dig, Mon 6 Jan 08:30');
  });
});
