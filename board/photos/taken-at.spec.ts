import { describe, expect, it } from '@jest/globals';
import { takenAt } from './taken-at.js';

const NOW = Date.parse('2031-01-06T14:00:00Z');
const HOUR = 3_600_000;

describe('when a picture was taken', () => {
  it.each([
    ['with the camera, now', NOW - 2000, '2031-01-06T14:00:00.000Z'],
    ['before, when its file was written', NOW - 3 * HOUR, '2031-01-06T11:00:00.000Z'],
    ['never later than now', NOW + HOUR, '2031-01-06T14:00:00.000Z'],
    ['now where the file does not tell', 0, '2031-01-06T14:00:00.000Z'],
  ])('%s', (_name, lastModified, said) => {
    expect(takenAt(lastModified, NOW, NOW)).toBe(said);
  });

  it('goes by the clock of the service, not by that of a phone that runs wrong', () => {
    expect(takenAt(NOW - 3 * HOUR, NOW, NOW + 2 * HOUR)).toBe('2031-01-06T13:00:00.000Z');
  });
});
