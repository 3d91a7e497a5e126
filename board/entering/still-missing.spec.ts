import { describe, expect, it } from '@jest/globals';
import { stillMissing, tradesMissing } from './still-missing.js';

const crew = (trades: string[], active = true) => ({
  id: trades.join(),
  name: 'Crew',
  size: 2,
  trades,
  active,
});
const pool = (kind: string) => ({ id: kind, kind, name: kind, quantity: 0, unit: 'piece' });
const NOTHING = { crews: [], equipmentPools: [], authorities: [], sites: { edges: [] } };
const ALL = ['labour', 'mason', 'cable', 'electrician', 'office'];
const authority = { id: 'a', name: 'Building department', noticeHours: 24, visitMinutes: 30, phone: null };
const site = {
  node: {
    id: 's',
    address: '3 Quarry Road',
    town: 'Alder Bend',
    frostDepthInches: 42,
    frostSource: 'rule',
    authority: null,
  },
};

describe('what is still missing before a job', () => {
  it('is everything in an empty company, in the order it is needed', () => {
    expect(stillMissing(NOTHING)).toEqual(['crews', 'equipment', 'authority', 'site', 'job']);
  });

  it('is told by what there is, in whatever order it came', () => {
    expect(stillMissing({ ...NOTHING, sites: { edges: [site] }, authorities: [authority] })).toEqual([
      'crews',
      'equipment',
      'job',
    ]);
  });

  it('is the job alone when all else is there; equipment counts with a quantity of none', () => {
    const equipmentPools = ['blanket', 'enclosure', 'heater'].map(pool);
    expect(
      stillMissing({
        crews: [crew(ALL)],
        equipmentPools,
        authorities: [authority],
        sites: { edges: [site] },
      }),
    ).toEqual(['job']);
  });

  it('one crew may have several trades, and one that is out of planning has none', () => {
    expect(
      tradesMissing({ crews: [crew(['labour', 'mason']), crew(['cable']), crew(['electrician'], false)] }),
    ).toEqual(['electrician', 'office']);
  });
});
