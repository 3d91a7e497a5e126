import { turned, type Point } from '../../entry/geometry/point.js';
import { fillWithBands, tightest } from './bands.js';
import type { Field } from './field.js';
import { straightened } from './splice.js';
import { tieLoops, weaveLine, type Weave } from './weave.js';
import { zoneOf } from './zone.js';

/** How a field is filled: along which way around it the cable goes on, and how the runs lie. */
export interface FieldWay {
  /** From where the cable comes in to where it leaves, in plan. */
  readonly spine: readonly Point[];
  /** The plan is turned by this for the runs to lie along x, rad. */
  readonly angle: number;
}

/** A field filled at one spacing. */
export interface LaidField {
  readonly way: FieldWay;
  readonly spine: readonly Point[];
  readonly weave: Weave;
}

/** Forgiven between spine and runs, in. */
const HAIR = 1e-6;

/** Fills a field at a spacing. */
export function layField(
  field: Field,
  way: FieldWay,
  spacing: number,
  least: number,
  greatest: number,
): LaidField {
  const zone = zoneOf(field, way.angle, least);
  const spine = straightened(way.spine.map((p) => turned(p, way.angle)));
  const limits = { asked: spacing, closest: least, greatest };
  const tight = tightest(limits);
  const beside = spine.slice(1).map((b, i) => ({ a: spine[i]!, b, radius: tight - HAIR }));
  const loops = fillWithBands(zone, beside, limits);
  return { way, spine, weave: tieLoops(loops, spine, zone, tight, least) };
}

/** The cable's line through a laid field, in plan; every loop is shorter by `pullBack` at each closed end. */
export const fieldLine = ({ way, spine, weave }: LaidField, pullBack: number): Point[] =>
  weaveLine(spine, weave, pullBack).map((p) => turned(p, -way.angle));
