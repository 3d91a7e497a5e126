import { describe, expect, it } from '@jest/globals';
import { typedJob } from '../forms/testing/typed-job.js';
import { NEW_JOB } from '../forms/job-fields.js';
import { entryWords } from './entry-words.js';
import { sectionSketch } from './section-sketch.js';

describe('the section as typed', () => {
  it('goes out over the landing, down every riser and along the walk', () => {
    expect(sectionSketch(typedJob(), 42)?.profile).toEqual([
      [0, -21],
      [60, -21],
      [60, -14],
      [72, -14],
      [72, -7],
      [84, -7],
      [84, 0],
      [156, 0],
    ]);
  });

  it('has footing and frost under it, all inside its box', () => {
    const sketch = sectionSketch(typedJob(), 42);
    expect(sketch?.footing).toEqual({ x: 42, y: 34, width: 18, height: 10 });
    const [left, top, width, height] = sketch?.box ?? [0, 0, 0, 0];
    for (const [x, y] of sketch?.profile ?? []) {
      expect(x).toBeGreaterThanOrEqual(left);
      expect(x).toBeLessThanOrEqual(left + width);
      expect(y).toBeGreaterThanOrEqual(top);
    }
    expect(top + height).toBeGreaterThanOrEqual(44);
  });

  it('is none while nothing is typed', () => expect(sectionSketch(NEW_JOB, null)).toBeNull());

  it('comes down to the walk where risers are short of the landing, for the check to speak of', () => {
    const profile = sectionSketch(typedJob({ landingHigh: '30', hasSteps: '' }), null)?.profile ?? [];
    expect(profile).toContainEqual([60, -30]);
    expect(profile).toContainEqual([60, 0]);
  });

  it('draws no thousand steps of a slip of the pen', () => {
    expect(sectionSketch(typedJob({ risers: '3000' }), null)?.profile.length).toBeLessThan(60);
  });
});

describe('the entry in words', () => {
  it('reads back what is typed', () => {
    expect(entryWords(typedJob(), 42)).toEqual([
      'Landing 96 in along the wall and 60 in out from it, 21 in above the walk.',
      '3 risers of 7 in climb 21 in.',
      'Walk 18 ft long, 48 in wide.',
      "The footing's bottom lies 44 in under grade, 2 in below the frost depth of 42 in.",
      'Heated: landing, steps, walk, by 4560 W over 380 ft: 12 W per foot.',
    ]);
  });

  it.each([
    ['42', ', at the frost depth of 42 in'],
    ['36', ', 6 in short of the frost depth of 42 in'],
  ])('says how a footing at %s in lies to the frost', (footingBottom, words) => {
    expect(entryWords(typedJob({ footingBottom }), 42)[3]).toContain(words);
  });

  it('says only what is known', () => {
    expect(entryWords({ ...NEW_JOB, heatsLanding: '', heatsSteps: '', heatsWalk: '' }, null)).toEqual([
      'Nothing is heated.',
    ]);
  });
});
