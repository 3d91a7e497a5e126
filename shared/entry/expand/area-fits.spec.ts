import { describe, expect, it } from '@jest/globals';
import { checkedEntry } from '../testing/checked-entry.js';
import { anyFits, areaFits } from './area-fits.js';
import { setOfArea } from './expanded-phase.js';

const entry = checkedEntry((measured) => {
  measured.areas[2].heated = false;
  measured.heatingSets[0].areas.pop();
});
const fitting = (filter: Parameters<typeof areaFits>[1]) =>
  entry.areas.filter((area) => areaFits(area, filter)).map((area) => area.key);

describe('a filter of areas', () => {
  it('left out lets every area through', () => {
    expect(fitting(undefined)).toEqual(['landing', 'steps', 'walk']);
    expect(fitting({})).toEqual(['landing', 'steps', 'walk']);
  });

  it('looks at the kind', () => {
    expect(fitting({ kinds: ['landing', 'walk'] })).toEqual(['landing', 'walk']);
  });

  it('looks at heat, either way', () => {
    expect(fitting({ heated: true })).toEqual(['landing', 'steps']);
    expect(fitting({ heated: false })).toEqual(['walk']);
  });

  it('looks at both together', () => {
    expect(fitting({ kinds: ['walk'], heated: true })).toEqual([]);
    expect(anyFits(entry.areas, { kinds: ['walk'], heated: true })).toBe(false);
    expect(anyFits(entry.areas, { kinds: ['walk'] })).toBe(true);
    expect(anyFits([], undefined)).toBe(false);
  });
});

describe('the set of an area', () => {
  it('is the one whose cable runs through it', () => {
    expect(entry.areas.map((area) => setOfArea(entry, area)?.key ?? null)).toEqual(['set-1', 'set-1', null]);
  });
});
