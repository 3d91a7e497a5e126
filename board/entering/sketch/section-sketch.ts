import { ticked, type Values } from '../forms/field.js';
import { typedNumber } from '../forms/typed-number.js';

/** A label of the sketch at a place, in inches like everything here; y runs down, 0 is the finished walk. */
interface SketchLabel {
  readonly x: number;
  readonly y: number;
  readonly text: string;
}

/** A section through the entry from the wall outwards, as far as the measures are typed. */
export interface Sketch {
  /** Left, top, width and height of all that is drawn. */
  readonly box: readonly [left: number, top: number, width: number, height: number];
  /** The walked line: landing, steps, walk. */
  readonly profile: readonly (readonly [x: number, y: number])[];
  /** Where the walk begins. */
  readonly foot: number;
  readonly footing: {
    readonly x: number;
    readonly y: number;
    readonly width: number;
    readonly height: number;
  } | null;
  /** Depth of frost; null while no site is chosen. */
  readonly frost: number | null;
  readonly labels: readonly SketchLabel[];
}

/** How much of the walk is drawn, in. */
const WALK_SHOWN = 72;
/** Room around the drawing, in. */
const ROOM = 14;
/** Room left of the wall, where heights are written, in. */
const LEFT = 26;

/** The section that the measures make; null while too little is typed to draw anything. */
export function sectionSketch(values: Values, frost: number | null): Sketch | null {
  const number = (name: string) => typedNumber(values[name] ?? '') ?? 0;
  const has = (name: string) => ticked(values, name);
  const steps = has('hasSteps')
    ? { count: number('risers'), rise: number('riser'), tread: number('tread') }
    : null;
  const climbed = steps ? steps.count * steps.rise : 0;
  const high = has('hasLanding') ? number('landingHigh') || climbed : climbed;
  const out = has('hasLanding') ? number('landingOut') : 0;
  const long = has('hasWalk') ? number('walkLong') * 12 : 0;
  if ((out <= 0 || high <= 0) && climbed <= 0 && long <= 0) return null;
  // A slip of the pen would draw a thousand steps; the check says what is wrong with it.
  const count = Math.min(Math.max(0, Math.floor(steps?.count ?? 0)), 24);
  const profile: [number, number][] = [
    [0, -high],
    [out, -high],
  ];
  let [x, y] = [out, -high];
  for (let riser = 1; riser <= count && steps; riser += 1) {
    y = riser === count ? 0 : y + steps.rise;
    profile.push([x, y]);
    if (riser < count) profile.push([(x += steps.tread), y]);
  }
  if (y !== 0) profile.push([x, 0]);
  const foot = x;
  profile.push([foot + (has('hasWalk') ? Math.min(long || WALK_SHOWN, WALK_SHOWN) : ROOM), 0]);
  const footing = footingUnder(out > 0 ? out : foot, values);
  const end = profile.at(-1)?.[0] ?? foot;
  const deepest = Math.max(frost ?? 0, footing ? footing.y + footing.height : 0, 6);
  return {
    box: [-LEFT, -high - ROOM, end + LEFT + ROOM, high + deepest + 2 * ROOM],
    profile,
    foot,
    footing,
    frost,
    labels: [
      ...(high > 0 ? [{ x: 3 - LEFT, y: 2 - high / 2, text: `${said(high)} in` }] : []),
      ...(out > 0 ? [{ x: out / 2, y: -high - 4, text: `${said(out)} in` }] : []),
      ...(long > 0 ? [{ x: foot + 6, y: -4, text: `walk ${said(long / 12)} ft` }] : []),
      ...(frost !== null ? [{ x: foot + 6, y: frost - 3, text: `frost ${said(frost)} in` }] : []),
    ],
  };
}

/** The footing under the front of what is built; null until its size is typed. */
function footingUnder(front: number, values: Values): Sketch['footing'] {
  const [width, height, bottom] = ['footingWide', 'footingThick', 'footingBottom'].map((name) =>
    typedNumber(values[name] ?? ''),
  );
  const builds = ticked(values, 'hasLanding') || ticked(values, 'hasSteps');
  if (!builds || !width || !height || !bottom) return null;
  return { x: Math.max(0, front - width), y: bottom - height, width, height };
}

const said = (value: number): string => String(Math.round(value * 100) / 100);
