import { ENTRY_FIXTURE, type Loose } from './entry-fixture.js';

/** How the areas of the fixture lie to each other: an invented plan, in inches. */
export const SITE_PLAN_FIXTURE = {
  wallInches: [
    [-24, 0],
    [108, 0],
  ],
  penetrationInches: [8, 0],
  surfaces: [
    {
      area: 'landing',
      outlineInches: [
        [0, 0],
        [84, 0],
        [84, 60],
        [0, 60],
      ],
      setbackInches: 3,
      sideSetbacks: [
        { side: 1, inches: 4 },
        { side: 3, inches: 4 },
      ],
    },
    {
      area: 'steps',
      topInches: [
        [12, 60],
        [72, 60],
      ],
    },
    {
      area: 'walk',
      line: [
        { atInches: [42, 96], widthInches: 48 },
        { atInches: [42, 240], widthInches: 48 },
      ],
    },
  ],
};

/** The fixture with its plan, a deep copy that a test may change at will. */
export const drawnEntryFixture = (): Loose =>
  JSON.parse(JSON.stringify({ ...ENTRY_FIXTURE, sitePlan: SITE_PLAN_FIXTURE }));
