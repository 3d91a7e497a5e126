import { describe, expect, it } from '@jest/globals';
import fc from 'fast-check';
import { inches } from '../../units/length.js';
import { published } from '../source.js';
import { blockCourses } from './block-courses.js';
import { measuredRisers, risersToCome } from './measured-risers.js';
import { equalRisers } from './riser-count.js';
import { planRisers, type RiserFacts } from './riser-plan.js';

/** An invented entry: sill 31½ in over the walk, 1 in down to the landing, layers of 2½ in, footing 38 in under the walk. */
const facts = (more: Partial<RiserFacts> = {}): RiserFacts => ({
  sill: inches(31),
  doorDrop: inches(1),
  doorSwingsOver: true,
  walk: inches(0),
  footingTop: inches(-38),
  treadBuildUp: inches(2.5),
  walkBuildUp: inches(2.5),
  handrailPlanned: true,
  guardPlanned: true,
  ...more,
});
const heights = fc.double({ min: 0.5, max: 60, noNaN: true });
const layers = fc.double({ min: 1, max: 5, noNaN: true });

describe('equal risers', () => {
  it('are the fewest that keep the limit', () => {
    fc.assert(
      fc.property(heights, fc.double({ min: 4, max: 8, noNaN: true }), (rise, highest) => {
        const { count, riser } = equalRisers(inches(rise), inches(highest));
        expect(count * riser).toBeCloseTo(rise, 9);
        expect(riser).toBeLessThanOrEqual(highest + 1e-8);
        expect((count - 1) * highest).toBeLessThan(rise + 1e-8);
      }),
    );
  });

  it('are none where nothing rises', () => {
    expect(equalRisers(inches(0))).toEqual({ count: 0, riser: 0 });
  });

  it('are not worked out downwards or without a limit', () => {
    expect(() => equalRisers(inches(-1))).toThrow('cannot lie below the walk, got -1 in');
    expect(() => equalRisers(inches(30), inches(0))).toThrow('highest riser must be more than 0');
  });
});

describe('a plan of risers', () => {
  it('makes 30 in four risers of 7½ in, and every rule is kept', () => {
    const plan = planRisers(facts());
    expect(plan).toMatchObject({ rise: 30, count: 4, riser: 7.5, advice: [] });
    expect(plan.findings.map(({ rule, ok }) => [rule, ok])).toEqual([
      ['door-drop', true],
      ['riser-height', true],
      ['riser-spread', true],
      ['handrail', true],
      ['guard', true],
    ]);
    // Computed by hand: finished 7.5, 15, 22.5, 30 less 2.5 of layers.
    expect(plan.steps.map((step) => step.blockTop)).toEqual([5, 12.5, 20, 27.5]);
    expect(plan.steps.map((step) => step.blockRiser)).toEqual([7.5, 7.5, 7.5, 7.5]);
  });

  it('gives the first block riser the difference between the two build-ups', () => {
    const plan = planRisers(facts({ walkBuildUp: inches(4) }));
    expect(plan.steps.map((step) => step.blockRiser)).toEqual([9, 7.5, 7.5, 7.5]);
    expect(planRisers(facts({ walkBuildUp: inches(1) })).steps[0]?.blockRiser).toBe(6);
  });

  it('always makes finished risers equal and ends at the landing, whatever lies over the block', () => {
    fc.assert(
      fc.property(heights, layers, layers, (rise, tread, walk) => {
        const plan = planRisers(
          facts({
            sill: inches(rise + 1),
            treadBuildUp: inches(tread),
            walkBuildUp: inches(walk),
            footingTop: inches(-60),
          }),
        );
        const finished = [0, ...plan.steps.map((step) => step.blockTop + tread)].map(inches);
        for (const riser of measuredRisers(finished)) expect(riser).toBeCloseTo(plan.riser, 8);
        expect(finished.at(-1)).toBeCloseTo(rise, 8);
        const blocks = plan.steps.reduce((sum, step) => sum + step.blockRiser, 0);
        expect(blocks).toBeCloseTo(rise - tread + walk, 8);
      }),
    );
  });

  it('says what to build where too few risers are asked for', () => {
    const plan = planRisers(facts({ count: 3 }));
    expect(plan.riser).toBe(10);
    expect(plan.findings.find((one) => one.rule === 'riser-height')?.ok).toBe(false);
    expect(plan.advice).toEqual([
      '3 risers reach 23.25 in at most: build 4, or bring the landing down by 6.75 in or the walk up by as much',
    ]);
  });

  it('follows the amendment of the place', () => {
    const riserAmendment = { limit: inches(7), source: published('local ordinance 12') };
    const plan = planRisers(facts({ riserAmendment }));
    expect(plan.count).toBe(5);
    expect(plan.findings.find((one) => one.rule === 'riser-height')?.source).toBe(riserAmendment.source);
    expect(planRisers(facts({ riserAmendment, count: 4 })).advice[0]).toContain('build 5');
  });

  it('flags handrail and guard that nobody has planned', () => {
    const plan = planRisers(facts({ sill: inches(31.5), handrailPlanned: false, guardPlanned: false }));
    expect(plan.findings.filter((one) => !one.ok).map(({ rule }) => rule)).toEqual(['handrail', 'guard']);
  });

  it('of a level entry looks at the door alone', () => {
    const plan = planRisers(facts({ sill: inches(1) }));
    expect(plan).toMatchObject({ count: 0, riser: 0, steps: [] });
    expect(plan.findings.map(({ rule }) => rule)).toEqual(['door-drop']);
  });

  it.each([0, -1, 2.5])('refuses %p risers over 30 in', (count) => {
    expect(() => planRisers(facts({ count }))).toThrow('whole number, 1 or more over 30 in');
  });
});

describe('courses of block', () => {
  it.each([
    [40, 5, '5 full courses, levelled in the joints'],
    [39.8, 5, '5 full courses, levelled in the joints'],
    [40.2, 5, '5 full courses, levelled in the joints'],
    [41.5, 5, '5 full courses, then add 1.5 in of grout or bed on top'],
    [43, 5, '5 full courses, then a course cut or capped to 3 in'],
    [8, 1, '1 full course, levelled in the joints'],
    [0, 0, '0 full courses, levelled in the joints'],
  ])('to %p in: %p, %p', (height, full, words) => {
    expect(blockCourses(inches(height))).toMatchObject({ full, say: words });
  });

  it('add up to the height', () => {
    fc.assert(
      fc.property(fc.double({ min: 0, max: 120, noNaN: true }), (height) => {
        const { full, rest } = blockCourses(inches(height));
        expect(full * 8 + rest).toBeCloseTo(height, 9);
        expect(rest).toBeGreaterThanOrEqual(-0.25 - 1e-9);
        expect(rest).toBeLessThan(8);
      }),
    );
  });

  it('do not end under their footing', () => {
    expect(() => blockCourses(inches(-1))).toThrow('cannot end under its footing');
  });
});

describe('risers as measured', () => {
  it('are the differences of finished heights', () => {
    expect(measuredRisers([0, 7.5, 15, 22.25].map(inches))).toEqual([7.5, 7.5, 7.25]);
    expect(measuredRisers([inches(0)])).toEqual([]);
  });

  it('are foreseen from block tops before anything lies over them', () => {
    expect(risersToCome([5, 12.25].map(inches), inches(0), inches(2.5))).toEqual([7.5, 7.25]);
  });
});
