import { type DrawnSite, sitePlan, straightWalk } from './site-plans.js';

/**
 * A heating set of an order sheet: watts follow from length at 12 W per foot. The cold lead reaches from where the cable
 * begins to the box, with a few feet to spare.
 */
function heatingSet(
  key: string,
  areas: readonly string[],
  heatedFeet: number,
  lead: { readonly feet: number; readonly runFeet: number },
) {
  const watts = heatedFeet * 12;
  return {
    key,
    name: `Set ${key.toUpperCase()}, ${heatedFeet} ft`,
    areas,
    watts,
    volts: 240,
    ohms: Math.round((240 * 240 * 100) / watts) / 100,
    heatedFeet,
    coldLeadFeet: lead.feet,
    coldLeadOhmsPerFoot: 0.00198,
    coldLeadRunFeet: lead.runFeet,
    minBendInches: 1,
    cureDays: 28,
  };
}

const FROST = { depthInches: 42, source: 'Town of Alder Bend building department, rule of 2019 (invented)' };
const BUILD_UP = { bedInches: 1, stoneInches: 1.5, walkBaseInches: 4 };

const landing = (lengthInches: number, widthInches: number, heightInches: number) => ({
  key: 'landing',
  kind: 'landing',
  name: 'Landing',
  heated: true,
  lengthInches,
  widthInches,
  heightInches,
});

const steps = (riserCount: number, riserInches: number, widthInches: number, heated = true) => ({
  key: 'steps',
  kind: 'flight',
  name: 'Steps',
  heated,
  riserCount,
  riserInches,
  treadInches: 12,
  widthInches,
});

const walk = (lengthFeet: number, widthInches: number, heated = true) => ({
  key: 'walk',
  kind: 'walk',
  name: 'Walk',
  heated,
  lengthFeet,
  widthInches,
});

const footing = (lengthFeet: number) => ({
  lengthFeet,
  widthInches: 18,
  thicknessInches: 10,
  bottomInches: 44,
});

/** The design snowfall and the supply of the invented town's houses. */
const WEATHER = { airF: 22, dewPointF: 18, windMph: 8, snowInchesPerHour: 0.08 };
const SUPPLY = { volts: 240, terminalsC: 75, panelAmperes: 200, panelCarriedAmperes: 88 };
/** How far the landing lies under the sill, in. */
const DOOR_DROP = 1.5;

/** The landing's height follows from the steps; a handrail is planned from four risers on. */
function sheet(
  footingFeet: number,
  areas: readonly [ReturnType<typeof landing>, ReturnType<typeof steps>, ...ReturnType<typeof walk>[]],
  heatingSets: readonly object[],
  drawn: Pick<DrawnSite, 'walk' | 'walkJointsAtInches' | 'posts' | 'jointAt'>,
) {
  const [top, flight] = areas;
  return {
    version: 1,
    frost: FROST,
    footing: footing(footingFeet),
    buildUp: BUILD_UP,
    areas,
    heatingSets,
    design: {
      weather: WEATHER,
      freeAreaClass: 'I',
      supply: SUPPLY,
      heights: {
        sillAboveWalkInches: top.heightInches + DOOR_DROP,
        doorDropInches: DOOR_DROP,
        doorSwingsOver: false,
        handrailPlanned: flight.riserCount >= 4,
        guardPlanned: false,
      },
    },
    sitePlan: sitePlan({ ...top, treads: flight.riserCount - 1, ...drawn }),
  };
}

/** Measurement sheets of the invented demo sites, by the name of the street. */
export const MEASUREMENTS: Record<string, ReturnType<typeof sheet>> = {
  'Larch Street': sheet(
    28,
    [landing(60, 96, 21), steps(3, 7, 96), walk(18, 48)],
    [heatingSet('a', ['landing', 'steps', 'walk'], 380, { feet: 16, runFeet: 12 })],
    { posts: true, walk: straightWalk(18, 48), walkJointsAtInches: [108] },
  ),
  'Quarry Road': sheet(
    22,
    [landing(54, 72, 14), steps(2, 7, 72)],
    [heatingSet('a', ['landing', 'steps'], 98, { feet: 13, runFeet: 9 })],
    {},
  ),
  'Mill Lane': sheet(
    24,
    [landing(60, 84, 22.5), steps(3, 7.5, 84), walk(12, 42, false)],
    [heatingSet('a', ['landing', 'steps'], 140, { feet: 14, runFeet: 10 })],
    { jointAt: 42, walk: straightWalk(12, 42) },
  ),
  'Chapel Hill': sheet(
    26,
    [landing(66, 90, 29), steps(4, 7.25, 90), walk(24, 48)],
    [
      heatingSet('a', ['landing', 'steps'], 180, { feet: 15, runFeet: 11 }),
      heatingSet('b', ['walk'], 270, { feet: 30, runFeet: 16 }),
    ],
    { posts: true, walk: straightWalk(24, 48), walkJointsAtInches: [144] },
  ),
  'Ferry Steps': sheet(
    20,
    [landing(48, 72, 14.5), steps(2, 7.25, 72), walk(10, 42)],
    [heatingSet('a', ['landing', 'steps', 'walk'], 190, { feet: 12, runFeet: 8 })],
    {
      walk: [
        { outFeet: 5, alongFeet: 0, widthInches: 40 },
        { outFeet: 10, alongFeet: 0, widthInches: 48 },
      ],
    },
  ),
  'Orchard Rise': sheet(
    25,
    [landing(60, 84, 21.75), steps(3, 7.25, 84), walk(15, 48)],
    [heatingSet('a', ['landing', 'steps', 'walk'], 340, { feet: 17, runFeet: 13 })],
    { walk: straightWalk(15, 48) },
  ),
};
