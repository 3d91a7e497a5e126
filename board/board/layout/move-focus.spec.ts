import { describe, expect, it } from '@jest/globals';
import { moveFocus, type Stop } from './move-focus.js';

const stop = (id: string, row: number, left: number): Stop => ({ id, row, left, middle: left + 10 });
const stops = [
  stop('a2', 0, 100),
  stop('a1', 0, 0),
  stop('a3', 0, 300),
  stop('c1', 2, 90),
  stop('c2', 2, 400),
];

describe('the way of the arrow keys', () => {
  it('goes along a row in the order of time and ends at its ends', () => {
    expect(moveFocus(stops, 'a1', 'ArrowRight')).toBe('a2');
    expect(moveFocus(stops, 'a2', 'ArrowLeft')).toBe('a1');
    expect(moveFocus(stops, 'a3', 'ArrowRight')).toBeNull();
    expect(moveFocus(stops, 'a2', 'Home')).toBe('a1');
    expect(moveFocus(stops, 'a2', 'End')).toBe('a3');
  });

  it('skips rows without bars and lands on the nearest bar', () => {
    expect(moveFocus(stops, 'a2', 'ArrowDown')).toBe('c1');
    expect(moveFocus(stops, 'a3', 'ArrowDown')).toBe('c2');
    expect(moveFocus(stops, 'c2', 'ArrowUp')).toBe('a3');
    expect(moveFocus(stops, 'c2', 'ArrowDown')).toBeNull();
  });

  it('leaves other keys and unknown bars alone', () => {
    expect(moveFocus(stops, 'a1', 'Tab')).toBeNull();
    expect(moveFocus(stops, 'gone', 'ArrowRight')).toBeNull();
  });

  it('reaches every bar by arrows alone', () => {
    const reached = new Set(['a1']);
    for (const id of reached) {
      for (const key of ['ArrowLeft', 'ArrowRight', 'ArrowUp', 'ArrowDown']) {
        const next = moveFocus(stops, id, key);
        if (next) reached.add(next);
      }
    }
    expect(reached).toEqual(new Set(stops.map(({ id }) => id)));
  });
});
