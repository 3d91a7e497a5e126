import { ticked, type Values } from './field.js';
import { typedNumber } from './typed-number.js';

type Place = readonly [x: number, y: number];

/** Where the sleeve of the cold lead goes through the wall, from the corner of the landing, in. */
const SLEEVE = 8;
/** Kept free at the open sides of landing and steps, in; elsewhere what is usual. */
const SIDE = 4;

/**
 * The plan that the measures make when steps stand in the middle of the landing's front and the walk runs straight out from
 * the middle of the steps: inches from the landing's left corner at the wall, y out from it. Null while a measure is
 * missing, and where there is no landing to begin at: then no cable is laid.
 */
export function drawnPlan(values: Values): object | null {
  const number = (name: string) => typedNumber(values[name] ?? '');
  const [out, wide] = [number('landingOut'), number('landingWide')];
  if (!ticked(values, 'hasLanding') || out === null || wide === null) return null;
  const surfaces: object[] = [landing(out, wide)];
  let front = out;
  if (ticked(values, 'hasSteps')) {
    const [risers, tread, width] = [number('risers'), number('tread'), number('stepsWide')];
    if (risers === null || tread === null || width === null || width > wide) return null;
    surfaces.push(flight(out, (wide - width) / 2, (wide + width) / 2));
    front += (risers - 1) * tread;
  }
  if (ticked(values, 'hasWalk')) {
    const [long, width] = [number('walkLong'), number('walkWide')];
    if (long === null || width === null) return null;
    const line = [front, front + long * 12].map((y) => ({ atInches: [wide / 2, y], widthInches: width }));
    surfaces.push({ area: 'walk', line });
  }
  const wall: [Place, Place] = [
    [-24, 0],
    [wide + 24, 0],
  ];
  return { wallInches: wall, penetrationInches: [SLEEVE, 0], surfaces };
}

function landing(out: number, wide: number): object {
  const corners: Place[] = [
    [0, 0],
    [wide, 0],
    [wide, out],
    [0, out],
  ];
  // Sides 1 and 3 are the open ends; 0 is the wall, 2 the front.
  const ends = [1, 3].map((side) => ({ side, inches: SIDE }));
  return { area: 'landing', outlineInches: corners, sideSetbacks: ends };
}

const flight = (out: number, left: number, right: number): object => ({
  area: 'steps',
  topInches: [
    [left, out],
    [right, out],
  ],
  setbackInches: SIDE,
});
