import { describe, expect, it } from '@jest/globals';
import fc from 'fast-check';
import type { Answer } from './answer.js';
import { lasting } from './lasting.js';
import { latch } from './latch.js';

/** Answers from letters: x for broken or reopening, a dot for not, a question mark for unknown. */
const answers = (letters: string): Answer[] =>
  [...letters].map((letter) => (letter === '?' ? 'unknown' : letter === 'x'));
const letters = (list: readonly Answer[]): string =>
  list.map((answer) => (answer === 'unknown' ? '?' : answer ? 'x' : '.')).join('');

const anyAnswers = fc.array(fc.constantFrom<Answer>(true, false, 'unknown'), { minLength: 1, maxLength: 30 });

describe('a latch', () => {
  const latched = (broken: string, reopens: string) => letters(latch(answers(broken), answers(reopens)));

  it.each([
    ['stays closed until an hour reopens it', '.x....', '....x.', '.xxx..'],
    ['is open from the start', '.....', '.....', '.....'],
    ['closes on a broken hour that would reopen it', '.x.x', '.xxx', '.x.x'],
    ['is unknown after an unknown hour until one settles it', '.?...x.', '......x', '.????x.'],
    ['is open again after an unknown hour that is followed by a fair one', '.?..', '..x.', '.?..'],
    ['stays closed over an unknown hour that could not reopen it', 'x?.', '...', 'xxx'],
    ['is unknown where nobody knows whether it reopened', 'x..', '.?.', 'x??'],
  ])('%s', (_name, broken, reopens, expected) => {
    expect(latched(broken, reopens)).toBe(expected);
  });

  it('that is none gives the hours back', () => {
    const broken = answers('x.?x');
    expect(latch(broken, null)).toBe(broken);
  });

  it('says nothing that another truth of the unknown hours would undo', () => {
    fc.assert(
      fc.property(anyAnswers, anyAnswers, fc.infiniteStream(fc.boolean()), (broken, opens, truth) => {
        const reopens = broken.map((_, i) => opens[i % opens.length]!);
        const settled = (list: readonly Answer[]) =>
          list.map((answer) => (answer === 'unknown' ? (truth.next().value as boolean) : answer));
        const said = latch(broken, reopens);
        latch(settled(broken), settled(reopens)).forEach((answer, i) => {
          if (said[i] !== 'unknown') expect([i, answer]).toEqual([i, said[i]]);
        });
      }),
    );
  });
});

describe('lasting', () => {
  const lasted = (broken: string, hours: number, reopens: string | null = null) =>
    letters(lasting(answers(broken), reopens === null ? null : answers(reopens), hours));

  it.each([
    ['x.xx', 0, 'x.xx'],
    ['.xxxx.x', 2, '...xx..'],
    // What was before the first hour is unknown, so it may have lasted already.
    ['xxxx', 2, '??xx'],
    ['.x?xx', 2, '...??'],
  ])('%s for more than %p hours is %s', (broken, hours, expected) => {
    expect(lasted(broken, hours)).toBe(expected);
  });

  it('begins anew with an hour that reopens', () => {
    expect(lasted('.xxxxxx', 2, '....x..')).toBe('...x...');
    expect(lasted('.xxxxxxx', 2, '....x...')).toBe('...x...x');
  });

  it('is unknown where nobody knows whether an hour reopened', () => {
    expect(lasted('.xxxx', 2, '...?.')).toBe('...??');
  });
});
