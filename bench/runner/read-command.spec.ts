import { describe, expect, test } from '@jest/globals';
import { bench } from './bench.js';
import { amount, count, flag, optionalPath, path } from './option.js';
import { CommandError, readCommand } from './read-command.js';

const quick = bench({
  name: 'quick',
  says: 'a quick one',
  options: {
    jobs: count('how many', 2, 200),
    seconds: amount('how long', 1.5),
    best: optionalPath('best known values'),
    deep: flag('look deeper'),
  },
  run: () => ({ figures: {}, text: '', ok: true }),
});
const library = bench({
  name: 'library',
  says: 'reads files',
  options: { instances: path('where the files lie'), schedules: count('how many', 1) },
  run: () => ({ figures: {}, text: '', ok: true }),
});
const read = (...words: string[]) => readCommand(words, [quick, library]);
const refusal = (...words: string[]): string => {
  try {
    read(...words);
  } catch (error) {
    expect(error).toBeInstanceOf(CommandError);
    return (error as Error).message;
  }
  throw new Error('It was not refused.');
};

describe('what is given', () => {
  test('stands in for what is not', () => {
    expect(read('quick').given).toEqual({ jobs: 200, seconds: 1.5, best: null, deep: false });
    expect(read('quick').json).toBe(false);
  });

  test('is read by each option, after a space or an equals sign', () => {
    const {
      given,
      json,
      bench: found,
    } = read('quick', '--jobs', '20', '--seconds=0.5', '--best=a=b', '--deep', '--json');
    expect(given).toEqual({ jobs: 20, seconds: 0.5, best: 'a=b', deep: true });
    expect(json).toBe(true);
    expect(found).toBe(quick);
  });
});

describe('what is refused', () => {
  test('no name, and an unknown one, with the list of those there are', () => {
    expect(refusal()).toMatch(/Say which.*\n.*\n +quick +a quick one\n +library +reads files/);
    expect(refusal('slow')).toContain('There is no benchmark "slow".');
  });

  test('an unknown option, a stray word and one given twice, with what it takes', () => {
    expect(refusal('quick', '--job', '3')).toMatch(/"--job" is not known.*\n +--jobs N +how many \(200\)\n/);
    expect(refusal('quick', '20')).toContain('"20" is not known');
    expect(refusal('quick', '--jobs', '3', '--jobs=4')).toContain('--jobs is given twice');
    expect(refusal('quick', '--json=yes')).toContain('"--json=yes" is not known');
    expect(refusal('quick', '--')).toContain('"--" is not known');
  });

  test.each([
    [['quick', '--jobs', '1'], '--jobs takes a whole number from 2 up, not "1"'],
    [['quick', '--jobs', '2.5'], '--jobs takes a whole number from 2 up, not "2.5"'],
    [['quick', '--jobs='], '--jobs takes a whole number from 2 up, not ""'],
    [['quick', '--jobs'], '--jobs has no value'],
    [['quick', '--seconds', '0'], '--seconds takes a number above zero, not "0"'],
    [['quick', '--seconds', 'Infinity'], '--seconds takes a number above zero, not "Infinity"'],
    [['quick', '--best='], '--best takes a path'],
    [['library', '--schedules', '5'], '--instances is missing'],
    [['library', '--instances', 'here'], '--schedules is missing'],
  ])('a value that cannot be used: %j', (words, message) => {
    expect(refusal(...words)).toContain(message);
  });

  test('says of an option without a value of its own that it must be given', () => {
    expect(refusal('library')).toMatch(/--instances PATH +where the files lie; must be given/);
  });
});
