import type { Point } from '../../../entry/geometry/point.js';
import type { Field } from '../field.js';
import { nearestOnGrid, type Grid } from './nearest-on-grid.js';
import { mayLie } from './room.js';
import type { Samples } from './sample-path.js';

/** The widest place inside the setbacks of a field where no cable lies. */
export interface Gap {
  /** Across, in: twice the way from its middle to the nearest cable. */
  readonly across: number;
  readonly at: Point;
}

/** How finely the middle of the widest gap is looked for in the end, in. */
const FINE = 0.05;
/** From so many places at most, so many pitches from each other, it is looked for. */
const STARTS = 12;
const APART = 3;
/** It is shifted by so many pitches at most; beyond twice as many it is not known what lies beside it. */
const FARTHEST = 2;

/**
 * Looks for the widest gap of a field: every place of a grid of `pitch` inches is held against the nearest cable, and
 * the best one is shifted until no place beside it is better. A keep-out holds `around` inches free at least.
 */
export class GapFinder {
  private readonly grid: Grid;
  /** The places of the grid on which the cable may lie, and where they are. */
  private readonly open: Int32Array;
  private readonly openX: Float64Array;
  private readonly openY: Float64Array;
  /** Corners of the open part, where a grid may have no place. */
  private readonly corners: readonly Point[];

  constructor(
    private readonly field: Field,
    private readonly around: number,
    private readonly pitch: number,
  ) {
    const xs = field.sides.map(({ a }) => a.x);
    const ys = field.sides.map(({ a }) => a.y);
    const [left, top] = [Math.min(...xs), Math.min(...ys)];
    const columns = Math.ceil((Math.max(...xs) - left) / pitch) + 1;
    const rows = Math.ceil((Math.max(...ys) - top) / pitch) + 1;
    this.grid = { left, top, pitch, columns, rows };
    const open: number[] = [];
    const at = { x: left, y: top };
    for (let row = 0; row < rows; row++) {
      at.y = top + row * pitch;
      for (let column = 0; column < columns; column++) {
        at.x = left + column * pitch;
        if (mayLie(field, at, around)) open.push(row * columns + column);
      }
    }
    this.open = Int32Array.from(open);
    this.openX = Float64Array.from(open, (node) => left + (node % columns) * pitch);
    this.openY = Float64Array.from(open, (node) => top + Math.floor(node / columns) * pitch);
    this.corners = cornersOf(field).filter((corner) => mayLie(field, corner, around));
  }

  /** The widest gap beside the samples of a path, of which only those at the field's height are looked at. */
  widest(samples: Samples): Gap {
    const { x, y, z, count } = samples;
    const { left, top, pitch } = this.grid;
    const { open, openX, openY } = this;
    const { level } = this.field;
    const own: number[] = [];
    for (let i = 0; i < count; i++) {
      const above = z[i]! - level;
      if (above < HAIR && above > -HAIR) own.push(i);
    }
    if (own.length === 0) return { across: Infinity, at: { x: left, y: top } };
    const nearest = nearestOnGrid(this.grid, samples, own);
    const aways = new Float64Array(open.length);
    let most = 0;
    for (let k = 0; k < aways.length; k++) {
      const i = nearest[open[k]!]!;
      const dx = x[i]! - openX[k]!;
      const dy = y[i]! - openY[k]!;
      const away = dx * dx + dy * dy;
      aways[k] = away;
      if (away > most) most = away;
    }
    // The widest may lie between places of the grid: every place that comes near it is looked around at.
    const starts: Gap[] = [];
    const near = Math.max(0, Math.sqrt(most) - pitch) ** 2;
    for (let k = 0; k < aways.length && starts.length < STARTS; k++) {
      if (aways[k]! < near) continue;
      const at = { x: openX[k]!, y: openY[k]! };
      if (starts.some((one) => Math.hypot(one.at.x - at.x, one.at.y - at.y) < APART * pitch)) continue;
      starts.push({ across: 2 * Math.sqrt(aways[k]!), at });
    }
    let best: Gap = { across: 0, at: { x: left, y: top } };
    for (const at of this.corners) {
      const across = acrossIfWider(samples, own, at, best.across);
      if (across > best.across) best = { across, at };
    }
    for (const start of starts) {
      const found = this.shifted(start, samples, besideOf(samples, own, start, FARTHEST * pitch));
      if (found.across > best.across) best = found;
    }
    return best;
  }

  /** A gap shifted to where it is widest beside some samples, by ever smaller steps. */
  private shifted(gap: Gap, samples: Samples, beside: readonly number[]): Gap {
    let best = gap;
    const farthest = (FARTHEST * this.pitch) ** 2;
    for (let step = this.pitch / 2; step >= FINE;) {
      let better = best;
      for (const [dx, dy] of AROUND) {
        const at = { x: best.at.x + dx * step, y: best.at.y + dy * step };
        if ((at.x - gap.at.x) ** 2 + (at.y - gap.at.y) ** 2 > farthest) continue;
        const across = acrossIfWider(samples, beside, at, better.across + 1e-6);
        if (across > 0 && mayLie(this.field, at, this.around)) better = { across, at };
      }
      if (better === best) step /= 2;
      best = better;
    }
    return best;
  }
}

/** Farther than anything on an entry, in². */
const FAR = 1e18;

/** How wide the gap at a place is, in; 0 when it is no wider than another one, which most samples show at once. */
function acrossIfWider({ x, y }: Samples, own: readonly number[], at: Point, than: number): number {
  const enough = (than / 2) ** 2;
  let least = FAR;
  for (const i of own) {
    const dx = x[i]! - at.x;
    const dy = y[i]! - at.y;
    const away = dx * dx + dy * dy;
    if (away >= least) continue;
    if (away <= enough) return 0;
    least = away;
  }
  return 2 * Math.sqrt(least);
}

/** The samples that can be nearest to a place no farther than `shift` from the middle of a gap. */
function besideOf({ x, y }: Samples, own: readonly number[], { at, across }: Gap, shift: number): number[] {
  const reach = (across / 2 + 2 * shift) ** 2;
  const found: number[] = [];
  for (const i of own) {
    const dx = x[i]! - at.x;
    const dy = y[i]! - at.y;
    if (dx * dx + dy * dy < reach) found.push(i);
  }
  return found;
}

/** Where the setbacks of sides that follow each other meet, a hair inside them. */
function cornersOf({ sides }: Field): Point[] {
  const turn = Math.sign(sides.reduce((sum, { a, b }) => sum + a.x * b.y - b.x * a.y, 0));
  const lines = sides.map(({ a, b, setback }) => {
    const long = Math.hypot(b.x - a.x, b.y - a.y);
    const [nx, ny] = [(-turn * (b.y - a.y)) / long, (turn * (b.x - a.x)) / long];
    return { nx, ny, off: nx * a.x + ny * a.y + setback + HAIR };
  });
  return lines.flatMap((one, i) => {
    const other = lines[(i + 1) % lines.length]!;
    const across = one.nx * other.ny - other.nx * one.ny;
    if (Math.abs(across) < 1e-6) return [];
    return [
      {
        x: (one.off * other.ny - other.off * one.ny) / across,
        y: (one.nx * other.off - other.nx * one.off) / across,
      },
    ];
  });
}

const HAIR = 1e-6;

/** Enough directions that a shift can follow a slanted side into its corner. */
const DIRECTIONS = 32;
const AROUND = Array.from({ length: DIRECTIONS }, (_, i) => {
  const angle = (2 * Math.PI * i) / DIRECTIONS;
  return [Math.cos(angle), Math.sin(angle)] as const;
});
