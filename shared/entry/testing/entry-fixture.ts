/** An invented entry for tests: landing, four risers and a walk, all heated by one set. Valid as it stands. */
export const ENTRY_FIXTURE = {
  version: 1,
  frost: { depthInches: 48, source: 'building department' },
  footing: { lengthFeet: 24, widthInches: 16, thicknessInches: 10, bottomInches: 48 },
  buildUp: { bedInches: 1, stoneInches: 1.5, walkBaseInches: 4 },
  areas: [
    {
      key: 'landing',
      kind: 'landing',
      name: 'Landing',
      heated: true,
      lengthInches: 60,
      widthInches: 84,
      heightInches: 30,
    },
    {
      key: 'steps',
      kind: 'flight',
      name: 'Steps',
      heated: true,
      riserCount: 4,
      riserInches: 7.5,
      treadInches: 12,
      widthInches: 60,
    },
    { key: 'walk', kind: 'walk', name: 'Walk', heated: true, lengthFeet: 12, widthInches: 48 },
  ],
  heatingSets: [
    {
      key: 'set-1',
      name: 'Set 1',
      areas: ['landing', 'steps', 'walk'],
      watts: 3000,
      volts: 240,
      ohms: 19.2,
      heatedFeet: 375,
      coldLeadFeet: 25,
      coldLeadRunFeet: 12,
    },
  ],
};

/** A deep copy of the fixture that a test may change at will. */
export const entryFixture = (): Loose => JSON.parse(JSON.stringify(ENTRY_FIXTURE));

/** Data of any shape, for tests that break it on purpose. */
// eslint-disable-next-line @typescript-eslint/no-explicit-any
export type Loose = any;
