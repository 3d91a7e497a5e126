import { describe, expect, test } from '@jest/globals';
import { countViolations } from './check-schedule.js';
import { bestOf, readBest } from './read-library.js';
import { readRcp } from './read-rcp.js';
import { readSm } from './read-sm.js';

const sm = `PRECEDENCE RELATIONS:
jobnr.    #modes  #successors   successors
   1        1          2           2   3
   2        1          1           4
   3        1          1           4
   4        1          0
************************************************************************
REQUESTS/DURATIONS:
jobnr. mode duration  R 1  R 2
------------------------------------------------------------------------
  1      1     0       0    0
  2      1     3       2    0
  3      1     2       1    4
  4      1     0       0    0
************************************************************************
RESOURCEAVAILABILITIES:
  R 1  R 2
    2    4
************************************************************************
`;
const rcp = '4 2\n2 4\n0 0 0 2 2 3\n3 2 0 1 4\n2 1 4 1 4\n0 0 0 0\n';
const project = {
  capacities: [2, 4],
  durations: [0, 3, 2, 0],
  demands: [
    [0, 0],
    [2, 0],
    [1, 4],
    [0, 0],
  ],
  successors: [[1, 2], [3], [3], []],
};

describe('instance files', () => {
  test('of both forms give the same project', () => {
    expect(readSm('one', sm)).toEqual({ name: 'one', ...project });
    expect(readRcp('one', rcp)).toEqual({ name: 'one', ...project });
  });

  test('that are cut off are refused with what is missing', () => {
    expect(() => readSm('one', sm.slice(0, sm.indexOf('REQUESTS')))).toThrow(
      'one: has no section "REQUESTS/DURATIONS"',
    );
    expect(() => readRcp('one', rcp.slice(0, 30))).toThrow(/one: number \d+ is missing/);
  });

  test('have their best values by parameter and instance', () => {
    const best = readBest('Par Inst Makespan Date\n===\n1\t2\t109\tThu Jun  9 2005\n60 10 77\n');
    expect(bestOf(best, 'j1201_2')).toBe(109);
    expect(bestOf(best, 'j12060_10')).toBe(77);
    expect(bestOf(best, 'j301_2')).toBe(109);
    expect(bestOf(best, 'j303_2')).toBeUndefined();
    expect(bestOf(best, 'other')).toBeUndefined();
  });
});

describe('the check of a schedule', () => {
  test('counts broken links and periods from either end', () => {
    expect(countViolations(project, Int32Array.of(0, 0, 3, 5), false)).toBe(0);
    expect(countViolations(project, Int32Array.of(5, 2, 0, 0), true)).toBe(0);
    expect(countViolations(project, Int32Array.of(0, 0, 0, 3), false)).toBe(2);
    expect(countViolations(project, Int32Array.of(0, 0, 3, 4), false)).toBe(1);
    expect(countViolations(project, Int32Array.of(0, 0, 3, 5), true)).toBeGreaterThan(0);
    expect(countViolations(project, Int32Array.of(0, -1, 3, 5), false)).toBe(1);
  });
});
