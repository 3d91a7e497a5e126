import { describe, expect, it } from '@jest/globals';
import { isWorthTelling, toTell } from './tell-holds.js';

const at = (hour: number, minute = 0) => new Date(Date.UTC(2031, 0, 6, hour, minute));
const told = toTell(at(13), at(17), ['cold']);

describe('a hold that changed', () => {
  it.each([
    ['the same', toTell(at(13), at(17), ['cold']), false],
    ['almost two hours later', toTell(at(14, 59), at(18, 59), ['cold']), false],
    ['two hours longer', toTell(at(13), at(19), ['cold']), true],
    ['two hours shorter', toTell(at(13), at(15), ['cold']), true],
    ['two hours earlier', toTell(at(11), at(17), ['cold']), true],
    ['for another limit', toTell(at(13), at(17), ['rain']), true],
    ['for one limit more', toTell(at(13), at(17), ['cold', 'rain']), true],
    ['without an end', toTell(at(13), null, ['cold']), true],
  ])('%s', (_name, now, worth) => {
    expect(isWorthTelling(told, now)).toBe(worth);
  });

  it('is not told again for one limit less', () => {
    expect(isWorthTelling(toTell(at(13), at(17), ['cold', 'rain']), told)).toBe(false);
  });

  it('is told when it never was', () => {
    expect(isWorthTelling(null, told)).toBe(true);
  });
});
