import type { Samples } from './sample-path.js';

/** Places in rows and columns, `pitch` inches apart. */
export interface Grid {
  readonly left: number;
  readonly top: number;
  readonly pitch: number;
  readonly columns: number;
  readonly rows: number;
}

/**
 * For every place of a grid the number of the nearest of some samples, row after row; -1 when there are none. What is
 * nearest to one place is handed on to the places beside it, forth and back over the grid: off by a small part of the pitch at most.
 */
export function nearestOnGrid(
  { left, top, pitch, columns, rows }: Grid,
  { x, y }: Samples,
  own: readonly number[],
): Int32Array {
  const nearest = new Int32Array(columns * rows).fill(-1);
  const least = new Float64Array(columns * rows).fill(Infinity);
  const offer = (node: number, column: number, row: number, i: number): void => {
    if (i < 0) return;
    const dx = left + column * pitch - x[i]!;
    const dy = top + row * pitch - y[i]!;
    const away = dx * dx + dy * dy;
    if (away >= least[node]!) return;
    least[node] = away;
    nearest[node] = i;
  };
  for (const i of own) {
    const [across, down] = [(x[i]! - left) / pitch + 0.5, (y[i]! - top) / pitch + 0.5];
    if (across < 0 || across >= columns || down < 0 || down >= rows) continue;
    const [column, row] = [across | 0, down | 0];
    offer(row * columns + column, column, row, i);
  }
  for (let row = 0; row < rows; row++) {
    handOnRow(row, row - 1);
  }
  for (let row = rows - 1; row >= 0; row--) {
    handOnRow(row, row + 1);
  }
  return nearest;

  /** Takes over from the row beside it, then along the row both ways. */
  function handOnRow(row: number, beside: number): void {
    const start = row * columns;
    if (beside >= 0 && beside < rows) {
      const other = beside * columns;
      for (let column = 0; column < columns; column++) {
        if (column > 0) offer(start + column, column, row, nearest[other + column - 1]!);
        offer(start + column, column, row, nearest[other + column]!);
        if (column + 1 < columns) offer(start + column, column, row, nearest[other + column + 1]!);
      }
    }
    for (let column = 1; column < columns; column++)
      offer(start + column, column, row, nearest[start + column - 1]!);
    for (let column = columns - 2; column >= 0; column--)
      offer(start + column, column, row, nearest[start + column + 1]!);
  }
}
