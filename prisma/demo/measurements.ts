/** A heating set of an order sheet: watts follow from length at 12 W per foot. */
function heatingSet(key: string, areas: readonly string[], heatedFeet: number, coldLeadRunFeet: number) {
  const watts = heatedFeet * 12;
  return {
    key,
    name: `Set ${key.toUpperCase()}, ${heatedFeet} ft`,
    areas,
    watts,
    volts: 240,
    ohms: Math.round((240 * 240 * 100) / watts) / 100,
    heatedFeet,
    coldLeadFeet: coldLeadRunFeet + 4,
    coldLeadRunFeet,
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

const sheet = (footingFeet: number, areas: readonly object[], heatingSets: readonly object[]) => ({
  version: 1,
  frost: FROST,
  footing: footing(footingFeet),
  buildUp: BUILD_UP,
  areas,
  heatingSets,
});

/** Measurement sheets of the invented demo sites, by the name of the street. */
export const MEASUREMENTS: Record<string, ReturnType<typeof sheet>> = {
  'Larch Street': sheet(
    28,
    [landing(60, 96, 21), steps(3, 7, 96), walk(18, 48)],
    [heatingSet('a', ['landing', 'steps', 'walk'], 480, 12)],
  ),
  'Quarry Road': sheet(
    22,
    [landing(54, 72, 14), steps(2, 7, 72)],
    [heatingSet('a', ['landing', 'steps'], 150, 9)],
  ),
  'Mill Lane': sheet(
    24,
    [landing(60, 84, 22.5), steps(3, 7.5, 84), walk(12, 42, false)],
    [heatingSet('a', ['landing', 'steps'], 190, 10)],
  ),
  'Chapel Hill': sheet(
    26,
    [landing(66, 90, 29), steps(4, 7.25, 90), walk(24, 48)],
    [heatingSet('a', ['landing', 'steps'], 260, 11), heatingSet('b', ['walk'], 370, 16)],
  ),
  'Ferry Steps': sheet(
    20,
    [landing(48, 72, 14.5), steps(2, 7.25, 72), walk(10, 42)],
    [heatingSet('a', ['landing', 'steps', 'walk'], 275, 8)],
  ),
  'Orchard Rise': sheet(
    25,
    [landing(60, 84, 21.75), steps(3, 7.25, 84), walk(15, 48)],
    [heatingSet('a', ['landing', 'steps', 'walk'], 430, 13)],
  ),
};
