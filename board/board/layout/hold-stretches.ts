import type { Axis } from './axis.js';
import { LANE } from './measures.js';
import type { PlacedRow } from './lay-out-row.js';
import type { BoardData, BoardJob } from './rows.js';

export type BoardHold = BoardJob['site']['weatherHolds'][number];

/** A weather hold where it shades a row, in pixels. */
export interface HoldStretch {
  readonly hold: BoardHold;
  readonly left: number;
  readonly width: number;
  readonly top: number;
  readonly height: number;
}

/**
 * The stretches of a row that weather closes. A hold of the whole site shades the whole row of its job, or the bars of
 * that site in a crew's row; a hold of one phase shades the lane of its bar. An open end reaches the end of the days.
 */
export function holdStretches(placed: PlacedRow, board: BoardData, axis: Axis): HoldStretch[] {
  return board.jobs.flatMap((job) =>
    job.site.weatherHolds.flatMap((hold) => {
      const from = Date.parse(hold.startsAt);
      const to = hold.endsAt ? Date.parse(hold.endsAt) : axis.end;
      if (to <= axis.start || from >= axis.end) return [];
      const across = { hold, left: axis.x(from), width: Math.max(2, axis.x(to) - axis.x(from)) };
      if (!hold.phase && placed.row.job) {
        return placed.row.job.id === job.id ? [{ ...across, top: 0, height: placed.height }] : [];
      }
      return placed.bars
        .filter(({ phase }) => (hold.phase ? phase.id === hold.phase.id : phase.job.id === job.id))
        .filter(({ times }) => hold.phase || (times.from < to && times.to > from))
        .map(({ top }) => ({ ...across, top, height: LANE }));
    }),
  );
}
