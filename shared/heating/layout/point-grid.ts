import type { Point } from '../../entry/geometry/point.js';

/** Points sorted into squares, to find what lies near a place without looking at all of them. */
export class PointGrid {
  private readonly squares = new Map<number, Point[]>();
  private count = 0;

  /** `size` is the side of a square, in; best near the distance that is looked for. */
  constructor(private readonly size: number) {}

  put(p: Point): void {
    const key = this.key(Math.floor(p.x / this.size), Math.floor(p.y / this.size));
    const square = this.squares.get(key);
    if (square) square.push(p);
    else this.squares.set(key, [p]);
    this.count++;
  }

  /** How far the nearest point is, in; infinite when there is none. */
  nearest(p: Point): number {
    if (this.count === 0) return Infinity;
    const [i, j] = [Math.floor(p.x / this.size), Math.floor(p.y / this.size)];
    let best = Infinity;
    // Whatever lies `ring` squares away is at least `ring − 1` sides away.
    for (let ring = 0; best > (ring - 1) * this.size && ring < 200; ring++) {
      for (let di = -ring; di <= ring; di++) {
        const edge = Math.abs(di) === ring;
        for (let dj = -ring; dj <= ring; dj += edge ? 1 : 2 * ring || 1) {
          for (const q of this.squares.get(this.key(i + di, j + dj)) ?? []) {
            best = Math.min(best, Math.hypot(p.x - q.x, p.y - q.y));
          }
        }
      }
    }
    return best;
  }

  private key(i: number, j: number): number {
    return (i + 100_000) * 1_000_000 + j + 100_000;
  }
}
