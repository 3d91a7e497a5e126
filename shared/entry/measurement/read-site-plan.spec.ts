import { describe, expect, it } from '@jest/globals';
import fc from 'fast-check';
import { areaFaces } from '../quantities/area-faces.js';
import { drawnEntryFixture } from '../testing/site-plan-fixture.js';
import type { Loose } from '../testing/entry-fixture.js';
import { checkMeasurement } from './check-measurement.js';
import type { EntryMeasurement } from './measurement.js';

const check = (change: (plan: Loose, entry: Loose) => void) => {
  const entry = drawnEntryFixture();
  change(entry.sitePlan, entry);
  return checkMeasurement(entry);
};
const read = (change: (plan: Loose, entry: Loose) => void = () => undefined): EntryMeasurement => {
  const checked = check(change);
  if (!checked.ok) throw new Error(JSON.stringify(checked.faults));
  return checked.measurement;
};
/** Every fault after a change, as `path: message`. */
const faults = (change: (plan: Loose, entry: Loose) => void): string[] => {
  const checked = check(change);
  return checked.ok ? [] : checked.faults.map(({ path, message }) => `${path}: ${message}`);
};

describe('a plan as a site visit draws it', () => {
  it('is taken, with what the areas say already and what plans often leave out', () => {
    const { sitePlan } = read();
    expect(sitePlan?.penetration).toEqual({ x: 8, y: 0 });
    const [landing, steps, walk] = sitePlan?.surfaces ?? [];
    expect(landing).toMatchObject({
      kind: 'landing',
      key: 'landing',
      name: 'Landing',
      setback: 3,
      sideSetbacks: { 1: 4, 3: 4 },
      keepOuts: [],
      joints: [],
    });
    expect(steps).toMatchObject({
      kind: 'flight',
      riserCount: 4,
      riser: 7.5,
      tread: 12,
      nosing: 1,
      frontSetback: 3,
    });
    expect(walk).toMatchObject({ kind: 'walk', joints: [], line: [{ width: 48 }, { width: 48 }] });
  });

  it('may be left out: then nothing is drawn', () => {
    expect(read((_, entry) => delete entry.sitePlan).sitePlan).toBeNull();
    expect(read((_, entry) => (entry.sitePlan = null)).sitePlan).toBeNull();
  });

  it('takes posts, drains, movement joints, bends and flares', () => {
    const { sitePlan } = read((plan) => {
      plan.surfaces[0].keepOuts = [
        { name: 'Post', centreInches: [4, 56], radiusInches: 2 },
        {
          name: 'Drain',
          clearanceInches: 2,
          outlineInches: [
            [40, 20],
            [46, 20],
            [46, 26],
            [40, 26],
          ],
        },
      ];
      plan.surfaces[0].joints = [
        [
          [42, 0],
          [42, 60],
        ],
      ];
      plan.surfaces[2] = {
        area: 'walk',
        jointsAtInches: [72],
        line: [
          { atInches: [42, 96], widthInches: 42 },
          { atInches: [42, 168], widthInches: 48 },
          { atInches: [114, 168], widthInches: 54 },
        ],
      };
    });
    const [landing, , walk] = sitePlan?.surfaces ?? [];
    expect(landing?.keepOuts).toMatchObject([
      { kind: 'round', clearance: 3, radius: 2 },
      { kind: 'outline', clearance: 2 },
    ]);
    expect(landing).toMatchObject({ joints: [[{ x: 42 }, { x: 42 }]] });
    expect(walk).toMatchObject({ joints: [72], line: [{}, {}, { at: { x: 114, y: 168 }, width: 54 }] });
  });

  it('gives an area the surface of its outline instead of the rectangle around it', () => {
    // 84 by 60 in less a corner of 24 by 30 in: 4320 in², 30 ft². Common geometry, no source.
    const { areas } = read((plan) => {
      plan.surfaces[0].outlineInches = [
        [0, 0],
        [84, 0],
        [84, 60],
        [24, 60],
        [24, 30],
        [0, 30],
      ];
      plan.surfaces[0].sideSetbacks = [];
    });
    expect(areaFaces(areas[0]!).top).toBeCloseTo(30, 9);
    expect(areaFaces(read().areas[0]!).top).toBeCloseTo(35, 9);
    expect(areaFaces(read().areas[2]!).top).toBeCloseTo(48, 9);
  });

  it('survives JSON', () => expect(JSON.parse(JSON.stringify(read()))).toEqual(read()));
});

describe('what is wrong with a plan is said with its place', () => {
  it.each<[string, (plan: Loose, entry: Loose) => void, string]>([
    [
      'a place of one number',
      (plan) => (plan.penetrationInches = [8]),
      'sitePlan.penetrationInches: must be two numbers, [x, y] in inches',
    ],
    [
      'a place as a text',
      (plan) => (plan.surfaces[0].outlineInches[1] = ['84', 0]),
      'sitePlan.surfaces[0].outlineInches[1][0]: must be a number in in, got "84"',
    ],
    [
      'a wall of one place',
      (plan) => plan.wallInches.pop(),
      'sitePlan.wallInches: must be two places, got 1',
    ],
    [
      'a wall without length',
      (plan) => (plan.wallInches[1] = [-24, 0]),
      'sitePlan.wallInches: starts and ends at the same place; measure both ends',
    ],
    [
      'a sleeve off the wall',
      (plan) => (plan.penetrationInches = [8, 3]),
      'sitePlan.penetrationInches: lies 3 in off the wall; measure both again from one corner',
    ],
    [
      'an area that is not there',
      (plan) => (plan.surfaces[0].area = 'porch'),
      'sitePlan.surfaces[0].area: there is no area "porch"; measure it or take it out',
    ],
    [
      'an area drawn twice',
      (plan) => plan.surfaces.push(plan.surfaces[2]),
      'sitePlan.surfaces: area "walk" is drawn twice; draw each once',
    ],
    [
      'an area not drawn',
      (plan) => plan.surfaces.pop(),
      'sitePlan.surfaces: area "walk" is not drawn; draw it, or leave the whole plan out',
    ],
    [
      'a name of another kind of area',
      (plan) => (plan.surfaces[1].line = []),
      'sitePlan.surfaces[1].line: unknown name; remove it or use one of: area, setbackInches, keepOuts, topInches, nosingInches, frontSetbackInches',
    ],
    [
      'sides that cross',
      (plan) =>
        (plan.surfaces[0].outlineInches = [
          [0, 0],
          [84, 60],
          [84, 0],
          [0, 60],
        ]),
      'sitePlan.surfaces[0].outlineInches: its sides cross, or it has no surface; name the corners in turn, each once',
    ],
    [
      'a depth that is not the measured one',
      (plan) => (plan.surfaces[0].outlineInches[2] = [84, 66]),
      'sitePlan.surfaces[0].outlineInches: drawn 66 in out from the wall (y), but lengthInches makes 60 in; measure both again',
    ],
    [
      'a setback of a side that is not there',
      (plan) => (plan.surfaces[0].sideSetbacks[0].side = 4),
      'sitePlan.surfaces[0].sideSetbacks[0].side: must be 0 to 3, got 4',
    ],
    [
      'a joint that ends inside',
      (plan) =>
        (plan.surfaces[0].joints = [
          [
            [42, 0],
            [42, 40],
          ],
        ]),
      'sitePlan.surfaces[0].joints[0]: must run straight from one side of the landing to another',
    ],
    [
      'a post beside the landing',
      (plan) => (plan.surfaces[0].keepOuts = [{ name: 'Post', centreInches: [-20, 30], radiusInches: 2 }]),
      'sitePlan.surfaces[0].keepOuts[0]: "Post" is not on this landing',
    ],
    [
      'a post of no shape',
      (plan) => (plan.surfaces[0].keepOuts = [{ name: 'Post' }]),
      'sitePlan.surfaces[0].keepOuts[0]: give centreInches and radiusInches of a round one, or outlineInches of any other',
    ],
    [
      'a flight wider than measured',
      (plan) => (plan.surfaces[1].topInches[1] = [84, 60]),
      'sitePlan.surfaces[1].topInches: drawn 72 in along the top riser, but widthInches makes 60 in; measure both again',
    ],
    [
      'a walk shorter than measured',
      (plan) => (plan.surfaces[2].line[1].atInches = [42, 200]),
      'sitePlan.surfaces[2].line: drawn 104 in along its middle, but lengthFeet makes 144 in; measure both again',
    ],
    [
      'a walk narrower than measured',
      (plan) => (plan.surfaces[2].line[1].widthInches = 40),
      'sitePlan.surfaces[2].line: drawn 44 in wide on the average, but widthInches makes 48 in; measure both again',
    ],
    [
      'a walk that stands still',
      (plan) => plan.surfaces[2].line.push(plan.surfaces[2].line[1]),
      'sitePlan.surfaces[2].line[2].atInches: is the place before it; leave one out',
    ],
    [
      'a joint beyond the walk',
      (plan) => (plan.surfaces[2].jointsAtInches = [150]),
      'sitePlan.surfaces[2].jointsAtInches[0]: must lie on the walk, 0 to 144 in along it, got 150',
    ],
    [
      'a walk that turns back',
      (plan) => {
        plan.surfaces[2].line[1].atInches = [42, 180];
        plan.surfaces[2].line.push({ atInches: [72, 128.04], widthInches: 48 });
      },
      'sitePlan.surfaces[2].line[1]: turns back by more than a right angle; measure it as two walks',
    ],
  ])('%s', (_, change, fault) => expect(faults(change)).toEqual([fault]));

  it('nothing in the place of a plan can make it throw', () => {
    fc.assert(
      fc.property(fc.anything({ maxDepth: 4 }), fc.nat(2), fc.anything({ maxDepth: 3 }), (all, at, one) => {
        expect(typeof check((_, entry) => (entry.sitePlan = all)).ok).toBe('boolean');
        const inner = check((plan) => Object.assign(plan.surfaces[at], one));
        expect(typeof inner.ok).toBe('boolean');
      }),
    );
  });
});
