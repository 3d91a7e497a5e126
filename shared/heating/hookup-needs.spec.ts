import { describe, expect, it } from '@jest/globals';
import { inches } from '../units/length.js';
import { latestReading, stageAccepted } from './accepted-reading.js';
import { hookupNeeds, type HookupFacts } from './hookup-needs.js';
import { allMet } from './need.js';
import { judgedAt } from './testing/set-fixture.js';

const READY: HookupFacts = {
  areas: ['landing', 'walk'],
  readings: [
    judgedAt(0, 'received', null),
    judgedAt(1, 'laid', 'landing'),
    judgedAt(2, 'covered', 'landing'),
    judgedAt(3, 'laid', 'walk'),
  ],
  coldLeadThrough: true,
  coldLeadFree: inches(8),
  sensorThrough: true,
  leadsLabelled: true,
};
const unmet = (more: Partial<HookupFacts>) =>
  hookupNeeds({ ...READY, ...more })
    .filter((need) => !need.met)
    .map((need) => need.id);

describe('the needs of a hookup', () => {
  it('are the same in the same order, met or not', () => {
    const ids = [
      'cold-lead-through',
      'cold-lead-length',
      'sensor-lead-through',
      'reading-laid',
      'latest-reading',
      'leads-labelled',
    ];
    expect(hookupNeeds(READY).map((need) => need.id)).toEqual(ids);
    const none = {
      areas: [],
      readings: [],
      coldLeadThrough: false,
      coldLeadFree: null,
      sensorThrough: false,
      leadsLabelled: false,
    };
    expect(hookupNeeds(none).map((need) => need.id)).toEqual(ids);
  });

  it('are all met when the last of them is', () => {
    expect(allMet(hookupNeeds(READY))).toBe(true);
  });

  it.each<[Partial<HookupFacts>, string]>([
    [{ coldLeadThrough: false }, 'cold-lead-through'],
    [{ coldLeadFree: null }, 'cold-lead-length'],
    [{ coldLeadFree: inches(5.9) }, 'cold-lead-length'],
    [{ sensorThrough: false }, 'sensor-lead-through'],
    [{ leadsLabelled: false }, 'leads-labelled'],
  ])('with %j one is open: %s', (more, id) => {
    expect(unmet(more)).toEqual([id]);
  });

  it('a cold lead with exactly 6 in free is long enough', () => {
    expect(unmet({ coldLeadFree: inches(6) })).toEqual([]);
  });

  it('wait for the reading after laying in every area, and name the area', () => {
    const readings = READY.readings.filter((reading) => reading.areaKey !== 'walk');
    expect(unmet({ readings })).toEqual(['reading-laid']);
    expect(hookupNeeds({ ...READY, readings }).find((need) => need.id === 'reading-laid')?.text).toContain(
      ': walk',
    );
  });

  it('are open again after a bad reading, and met after a good one', () => {
    const bad = [...READY.readings, judgedAt(4, 'covered', 'walk', false)];
    expect(unmet({ readings: bad })).toEqual(['latest-reading']);
    expect(unmet({ readings: [...bad, judgedAt(5, 'covered', 'walk')] })).toEqual([]);
  });

  it('do not take a bad reading after laying for a good one', () => {
    const readings = [...READY.readings.slice(0, 3), judgedAt(3, 'laid', 'walk', false)];
    expect(unmet({ readings })).toEqual(['reading-laid', 'latest-reading']);
  });

  it('are not met without any reading', () => {
    expect(unmet({ readings: [] })).toEqual(['reading-laid', 'latest-reading']);
  });

  it('say what to do while open, each with a source', () => {
    const none = hookupNeeds({
      areas: ['landing'],
      readings: [],
      coldLeadThrough: false,
      coldLeadFree: inches(2),
      sensorThrough: false,
      leadsLabelled: false,
    });
    expect(none.map((need) => need.text)).toEqual([
      'Fish the cold lead through its sleeve',
      'Cold lead has 2 in free; it needs at least 6 in free inside the wall',
      'Fish the sensor lead through its sleeve',
      'Take the reading after laying and have it accepted: landing',
      'Take the first reading of the set',
      'Label cold lead and sensor lead',
    ]);
    for (const need of none) expect(need.source.text).not.toBe('');
  });
});

describe('the latest reading', () => {
  it('is the latest in time, not in the list', () => {
    expect(latestReading([judgedAt(5, 'laid', 'walk'), judgedAt(2, 'laid', 'walk', false)])?.accepted).toBe(
      true,
    );
  });

  it('of two at one instant is the bad one, whatever their order', () => {
    const both = [judgedAt(1, 'laid', 'walk', false), judgedAt(1, 'laid', 'walk', true)];
    expect(latestReading(both)?.accepted).toBe(false);
    expect(latestReading([...both].reverse())?.accepted).toBe(false);
  });

  it('is none of nothing', () => {
    expect(latestReading([])).toBeUndefined();
  });

  it('is asked for a stage and an area apart from the others', () => {
    const readings = [judgedAt(1, 'laid', 'landing'), judgedAt(2, 'laid', 'walk', false)];
    expect(stageAccepted(readings, 'laid', 'landing')).toBe(true);
    expect(stageAccepted(readings, 'laid', 'walk')).toBe(false);
    expect(stageAccepted(readings, 'laid')).toBe(false);
    expect(stageAccepted(readings, 'covered', 'landing')).toBe(false);
  });
});
