import { describe, expect, it } from '@jest/globals';
import { days, epochMs, HOUR_MS } from '../units/time.js';
import { bedCuredAt, energisingNeeds, ENERGISING_CAUTION, type EnergisingFacts } from './energising-needs.js';
import { allMet } from './need.js';
import { judgedAt } from './testing/set-fixture.js';

const day = (n: number) => epochMs(n * 24 * HOUR_MS);
const READY: EnergisingFacts = {
  now: day(40),
  hookupDone: true,
  finalPassed: true,
  readings: [judgedAt(1, 'beforeHookup', null)],
  bedsFinished: [
    { areaKey: 'landing', at: day(5) },
    { areaKey: 'walk', at: day(12) },
  ],
  cureDays: days(28),
};
const unmet = (more: Partial<EnergisingFacts>) =>
  energisingNeeds({ ...READY, ...more })
    .filter((need) => !need.met)
    .map((need) => need.id);

describe('the needs of energising', () => {
  it('are all met at the end of the job', () => {
    expect(allMet(energisingNeeds(READY))).toBe(true);
    expect(energisingNeeds(READY).map((need) => need.id)).toEqual([
      'hookup-recorded',
      'final-passed',
      'reading-before-hookup',
      'bed-cured',
    ]);
  });

  it.each<[Partial<EnergisingFacts>, string]>([
    [{ hookupDone: false }, 'hookup-recorded'],
    [{ finalPassed: false }, 'final-passed'],
    [{ readings: [] }, 'reading-before-hookup'],
    [
      { readings: [judgedAt(1, 'beforeHookup', null), judgedAt(2, 'beforeHookup', null, false)] },
      'reading-before-hookup',
    ],
    [{ now: day(39) }, 'bed-cured'],
    [{ bedsFinished: [] }, 'bed-cured'],
  ])('with %j one is open: %s', (more, id) => {
    expect(unmet(more)).toEqual([id]);
  });

  it('count the cure from the last bed, to the hour', () => {
    expect(bedCuredAt(READY)).toBe(day(40));
    expect(unmet({ now: epochMs(day(40) - 1) })).toEqual(['bed-cured']);
    expect(unmet({ now: day(40) })).toEqual([]);
  });

  it('say from when the bed will have cured', () => {
    const need = energisingNeeds({ ...READY, now: day(20) }).find((one) => one.id === 'bed-cured');
    expect(need).toMatchObject({
      met: false,
      metFrom: day(40),
      text: expect.stringContaining('do not energise'),
    });
  });

  it('do not count the cure while a bed is not finished, and name it', () => {
    const bedsFinished = [...READY.bedsFinished, { areaKey: 'steps', at: null }];
    expect(bedCuredAt({ bedsFinished, cureDays: days(28) })).toBeNull();
    const need = energisingNeeds({ ...READY, bedsFinished }).find((one) => one.id === 'bed-cured');
    expect(need).toMatchObject({ met: false, text: expect.stringContaining('not finished: steps') });
    expect(need?.metFrom).toBeUndefined();
  });

  it("follow the set's own days", () => {
    expect(unmet({ cureDays: days(7), now: day(19) })).toEqual([]);
    expect(unmet({ cureDays: days(30), now: day(40) })).toEqual(['bed-cured']);
  });

  it('go with a caution', () => {
    expect(ENERGISING_CAUTION).toContain('never to cure mortar');
    expect(ENERGISING_CAUTION).toContain('not shock protection for people');
  });
});
