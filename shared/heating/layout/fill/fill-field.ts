import { dot, subtract, type Point } from '../../../entry/geometry/point.js';
import { nearestNode, placeOf, type Heading, type Lattice } from '../lattice/lattice.js';
import { divide, type LineFamily } from '../lattice/lines.js';
import { contour } from './contour.js';
import { bendsFit } from './bends-fit.js';
import type { FieldEnd, FieldWay } from './field-way.js';
import { LoopFiller, type Runs } from './hang-loops.js';

/** A field filled with cable along the lines of a lattice. */
export interface Filling {
  /** Corners of the cable's line, in plan. */
  readonly line: readonly Point[];
  /** Greatest distance between neighbouring runs, in. */
  readonly gap: number;
  /** Nodes without cable. */
  readonly bare: number;
  /** What is bare and what is bent, together: less is better. */
  readonly worth: number;
}

/** What a filling is chosen by. */
export interface Taste {
  /** A corner counts as much as so many bare nodes: long runs are worth leaving something bare. */
  readonly corner: number;
  /** Above this distance between runs one line left bare would be a gap too wide, in. */
  readonly roomy: number;
  /** Runs farther apart than this leave a gap too wide whatever else they do, in. */
  readonly widest: number;
}

/** What is left bare counts so much more where a line left bare would be a gap too wide. */
const ROOMY = 4;
/** Loops this many stretches long come first; shorter ones only fill what is left. */
const LONG = 3;
/** So few bare nodes are not worth short loops. */
const FEW = 3;
/** A line without room for its bends, or with a gap too wide, is worse than any number of bare nodes. */
const TIGHT = 1e5;
/** Stretches between cuts in which one line fewer is tried. */
const TRIED = 3;

/** How many lines there are across the runs and along them at a pitch: the same lines make the same filling. */
export function linesAt(way: FieldWay, pitch: number, taste: Taste): readonly [number, number] {
  const { across, along } = families(way, pitch, taste);
  return [divide(across, { pitch, fewer: 0 }).length, divide(along, { pitch, fewer: 0 }).length];
}

function families({ plan, runs, to }: FieldWay, pitch: number, { roomy }: Taste) {
  const [across, along] = runs === 'rows' ? [plan.rows, plan.columns] : [plan.columns, plan.rows];
  return { across: to.goesOn || pitch <= roomy ? across : closeAtTheEnds(across, roomy), along };
}

/**
 * A field filled along a way, with lines no closer than `pitch`. With one run fewer here and there loops may
 * fill it better: the best of a few is taken. Null when the cable cannot get through.
 */
export function fillField(way: FieldWay, pitch: number, taste: Taste): Filling | null {
  const { plan, runs } = way;
  const { corner, roomy, widest } = taste;
  const { across, along } = families(way, pitch, taste);
  const other = divide(along, { pitch, fewer: 0 });
  let best: Filling | null = null;
  for (let fewer = 0; fewer < 2 ** Math.min(TRIED, across.cuts.length - 1); fewer++) {
    const lines = divide(across, { pitch, fewer });
    const lattice = runs === 'rows' ? plan.build(lines, other) : plan.build(other, lines);
    const { rowGap, columnGap } = lattice;
    const [gap, otherGap] = runs === 'rows' ? [rowGap, columnGap] : [columnGap, rowGap];
    // Beside a bend lines may fan out so far that no run may lie along them.
    const fanned = gap > widest ? TIGHT : 0;
    for (const { line, bare } of fillings(lattice, way, otherGap > widest ? runs : 'both')) {
      const worth = bare * (gap > roomy ? ROOMY : 1) + corner * line.length + fanned;
      if (!best || worth < best.worth) best = { line, bare, gap, worth };
    }
    if (best?.bare === 0) break;
  }
  return best;
}

/**
 * Lines with the outermost two no farther apart than `within` on both hands, so that the last run may end anywhere without
 * a gap too wide beside it.
 */
function closeAtTheEnds({ cuts, apart }: LineFamily, within: number): LineFamily {
  const [first, last] = [cuts[0]!, cuts[cuts.length - 1]!];
  const step = ((last - first) * within) / apart(first, last);
  const inner = cuts.slice(1, -1).filter((cut) => cut > first + 2 * step && cut < last - 2 * step);
  if (apart(first, last) < 3 * within) return { cuts, apart };
  return { cuts: [first, first + step, ...inner, last - step, last], apart };
}

/** A lattice filled with loops of some length, and with short ones, along `rest`, too where those leave much bare. */
function fillings(lattice: Lattice, way: FieldWay, rest: Runs | 'both'): Pick<Filling, 'line' | 'bare'>[] {
  const from = nearestNode(lattice, way.from.at, way.from.reach);
  const to = nearestNode(lattice, way.to.at, way.to.reach);
  if (from < 0 || to < 0 || from === to) return [];
  const spine = contour(lattice, from, headingOf(lattice, way.from, from), way.hand, to);
  if (!spine) return [];
  const filler = new LoopFiller(lattice, spine);
  filler.hang(way.runs, LONG);
  const out = [];
  for (const least of [2, 1]) {
    filler.hang(rest, least);
    const bare = filler.bare();
    const corners = filler.corners();
    const tight = lattice.bend > 0 && !bendsFit(lattice, corners) ? TIGHT : 0;
    out.push({ line: corners.map((node) => placeOf(lattice, node)), bare: bare + tight });
    if (bare < FEW) break;
  }
  return out;
}

/** The way in at an end: of the four along the lines the one that leads most straight away from where it comes from. */
function headingOf(lattice: Lattice, { beyond, at }: FieldEnd, node: number): Heading {
  const into = subtract(placeOf(lattice, node), beyond ?? at);
  const along = (next: number) => {
    const step = subtract(placeOf(lattice, next), placeOf(lattice, 0));
    return next < lattice.free.length ? dot(into, step) / Math.hypot(step.x, step.y) : 0;
  };
  const [right, down] = [along(1), along(lattice.columns)];
  if (Math.abs(right) > Math.abs(down)) return right > 0 ? 0 : 2;
  return down > 0 ? 1 : 3;
}
