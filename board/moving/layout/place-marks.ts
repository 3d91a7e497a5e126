import type { Axis } from '../../board/layout/axis.js';
import type { PlacedRow } from '../../board/layout/lay-out-row.js';
import { LANE, MEASURES } from '../../board/layout/measures.js';
import type { Place, Preview } from '../preview.js';

/** Where a phase would be drawn, in pixels within its row. */
export interface PlacedMark {
  readonly phaseId: string;
  readonly left: number;
  readonly width: number;
  readonly top: number;
  readonly hatch: string;
  readonly wait: boolean;
  /** The phase that is tried itself, not one that follows. */
  readonly picked: boolean;
  readonly broken: boolean;
}

/**
 * New places of the phases of a row, each in the lane of its bar so that the eye can follow it; one whose bar is not drawn takes the first lane. Phases without
 * a new place, or with one outside the days, have none.
 */
export function placeMarks({ row, bars, height }: PlacedRow, preview: Preview, axis: Axis): PlacedMark[] {
  const broken = new Set(preview.broken.map(({ phaseId }) => phaseId));
  const tops = new Map(bars.map(({ phase, top }) => [phase.id, top]));
  const lanes = Math.max(1, Math.floor((height - 2 * MEASURES.rowPadding) / LANE));
  const first = bars[0]?.top ?? height - MEASURES.rowPadding - Math.min(lanes, 1) * LANE;
  return row.phases.flatMap((phase): PlacedMark[] => {
    const picked = phase.id === preview.tried.phaseId;
    const place: Place | null | undefined = picked ? preview.lands : preview.places.get(phase.id);
    if (!place || place.to < axis.start || place.from >= axis.end) return [];
    const left = axis.x(place.from);
    return [
      {
        phaseId: phase.id,
        left,
        width: Math.max(3, axis.x(place.to) - left),
        top: tops.get(phase.id) ?? first,
        hatch: phase.hatch,
        wait: phase.durationKind === 'elapsed',
        picked,
        broken: broken.has(phase.id),
      },
    ];
  });
}
