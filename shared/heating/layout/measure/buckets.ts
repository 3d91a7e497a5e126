/** Numbered places sorted into squares, to find what lies near a place without looking at all of them. */
export class Buckets {
  private readonly left: number;
  private readonly top: number;
  private readonly columns: number;
  private readonly rows: number;
  /** The last number put into each square, and before each number the one put in earlier; -1 is none. */
  private readonly last: Int32Array;
  private readonly earlier: Int32Array;

  /** Room for the places given; `size` is the side of a square, in. None is in it until it is put there. */
  constructor(
    private readonly xs: Float64Array,
    private readonly ys: Float64Array,
    count: number,
    private readonly size: number,
  ) {
    let [left, right, top, bottom] = [Infinity, -Infinity, Infinity, -Infinity];
    for (let i = 0; i < count; i++) {
      left = Math.min(left, xs[i]!);
      right = Math.max(right, xs[i]!);
      top = Math.min(top, ys[i]!);
      bottom = Math.max(bottom, ys[i]!);
    }
    [this.left, this.top] = [left, top];
    this.columns = count === 0 ? 0 : Math.floor((right - left) / size) + 1;
    this.rows = count === 0 ? 0 : Math.floor((bottom - top) / size) + 1;
    this.last = new Int32Array(this.columns * this.rows).fill(-1);
    this.earlier = new Int32Array(count).fill(-1);
  }

  put(i: number): void {
    const square =
      Math.floor((this.ys[i]! - this.top) / this.size) * this.columns +
      Math.floor((this.xs[i]! - this.left) / this.size);
    this.earlier[i] = this.last[square]!;
    this.last[square] = i;
  }

  /** Shows every number that was put within a square's side of a place, and some beyond. */
  near(x: number, y: number, see: (i: number) => void): void {
    const column = Math.floor((x - this.left) / this.size);
    const row = Math.floor((y - this.top) / this.size);
    for (let r = Math.max(0, row - 1); r <= Math.min(this.rows - 1, row + 1); r++) {
      for (let c = Math.max(0, column - 1); c <= Math.min(this.columns - 1, column + 1); c++) {
        for (let i = this.last[r * this.columns + c]!; i >= 0; i = this.earlier[i]!) see(i);
      }
    }
  }
}
