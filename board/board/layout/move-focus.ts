/** A bar as the keyboard meets it: its row, and where its middle stands across. */
export interface Stop {
  readonly id: string;
  readonly row: number;
  readonly left: number;
  readonly middle: number;
}

/**
 * The bar that a key leads to from another one; null when the key means nothing here or there is nothing that way.
 * Left and right walk along the row, up and down go to the nearest bar of the next row that has any.
 */
export function moveFocus(stops: readonly Stop[], current: string, key: string): string | null {
  const from = stops.find(({ id }) => id === current);
  if (!from) return null;
  const row = inRow(stops, from.row);
  const place = row.indexOf(from);
  switch (key) {
    case 'ArrowRight':
      return row[place + 1]?.id ?? null;
    case 'ArrowLeft':
      return row[place - 1]?.id ?? null;
    case 'Home':
      return row[0]?.id ?? null;
    case 'End':
      return row.at(-1)?.id ?? null;
    case 'ArrowDown':
      return nearest(stops, from, 1);
    case 'ArrowUp':
      return nearest(stops, from, -1);
    default:
      return null;
  }
}

const inRow = (stops: readonly Stop[], row: number): Stop[] =>
  stops.filter((stop) => stop.row === row).sort((a, b) => a.left - b.left);

function nearest(stops: readonly Stop[], from: Stop, step: 1 | -1): string | null {
  const rows = [...new Set(stops.map(({ row }) => row))].sort((a, b) => (a - b) * step);
  const next = rows.find((row) => (row - from.row) * step > 0);
  if (next === undefined) return null;
  const distance = (stop: Stop) => Math.abs(stop.middle - from.middle);
  return inRow(stops, next).reduce((best, stop) => (distance(stop) < distance(best) ? stop : best)).id;
}
