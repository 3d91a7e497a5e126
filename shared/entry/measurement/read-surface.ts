import type { FlightSurface, LandingSurface, Surface, WalkSurface } from '../geometry/site-plan.js';
import { KEY } from '../read/key.js';
import type { Reader } from '../read/reader.js';
import type { AreaKind, FlightArea, MeasuredArea } from './area.js';
import { readKeepOut } from './read-keep-out.js';
import { readInches } from './read-length.js';
import { readLine, readPoint } from './read-point.js';

/** Kept free along an edge and behind a nosing unless the plan says otherwise, in: 3 to 4 in, a rule of the trade. */
const USUAL_SETBACK = 3;
/** How far stone stands out over the riser unless the plan says otherwise, in. Common practice, no source. */
const USUAL_NOSING = 1;

const COMMON = ['area', 'setbackInches', 'keepOuts'];
const OWN: Record<AreaKind, readonly string[]> = {
  landing: ['outlineInches', 'sideSetbacks', 'joints'],
  flight: ['topInches', 'nosingInches', 'frontSetbackInches'],
  walk: ['line', 'jointsAtInches'],
};

type Common = Pick<Surface, 'key' | 'name' | 'setback' | 'keepOuts'>;

/**
 * Reads how an area lies on the plan; null, with a fault, where it names no area. What the area says already, such as the
 * riser of a flight, is taken from there and not asked for twice.
 */
export function readSurface(reader: Reader, areas: readonly MeasuredArea[]): Surface | null {
  const key = reader.at('area').text(KEY);
  const area = areas.find((one) => one.key === key);
  if (!area) {
    if (key !== '') reader.at('area').fault(`there is no area "${key}"; measure it or take it out`);
    return null;
  }
  reader.object([...COMMON, ...OWN[area.kind]]);
  const keepOuts = reader.at('keepOuts');
  const common: Common = {
    key,
    name: area.name,
    setback: setback(reader.at('setbackInches')),
    keepOuts: keepOuts.missing ? [] : keepOuts.list().map(readKeepOut),
  };
  switch (area.kind) {
    case 'landing':
      return readLanding(reader, common);
    case 'flight':
      return readFlight(reader, common, area);
    case 'walk':
      return readWalk(reader, common);
  }
}

const setback = (reader: Reader): number => reader.numberOr(USUAL_SETBACK, { min: 0, max: 48, unit: 'in' });

function readLanding(reader: Reader, common: Common): LandingSurface {
  const outline = reader.at('outlineInches').list(3).map(readPoint);
  const own = reader.at('sideSetbacks');
  const joints = reader.at('joints');
  const sides = (own.missing ? [] : own.list()).map((side) => {
    side.object(['side', 'inches']);
    const limits = { min: 0, max: Math.max(0, outline.length - 1), whole: true };
    return [side.at('side').number(limits), readInches(side.at('inches'), 0, 48)] as const;
  });
  return {
    ...common,
    kind: 'landing',
    outline,
    sideSetbacks: Object.fromEntries(sides),
    joints: joints.missing ? [] : joints.list().map(readLine),
  };
}

function readFlight(reader: Reader, common: Common, area: FlightArea): FlightSurface {
  return {
    ...common,
    kind: 'flight',
    top: readLine(reader.at('topInches')),
    riserCount: area.riserCount,
    riser: area.riser,
    tread: area.tread,
    nosing: reader.at('nosingInches').numberOr(USUAL_NOSING, { min: 0, max: 3, unit: 'in' }),
    frontSetback: setback(reader.at('frontSetbackInches')),
  };
}

function readWalk(reader: Reader, common: Common): WalkSurface {
  const joints = reader.at('jointsAtInches');
  return {
    ...common,
    kind: 'walk',
    line: reader
      .at('line')
      .list(2)
      .map((station) => {
        station.object(['atInches', 'widthInches']);
        return {
          at: readPoint(station.at('atInches')),
          width: readInches(station.at('widthInches'), 12, 480),
        };
      }),
    joints: joints.missing ? [] : joints.list().map((at) => readInches(at, 0, 6000)),
  };
}
