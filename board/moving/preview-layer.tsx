import { hatchFill } from '../draw/hatches.js';
import type { Axis } from '../board/layout/axis.js';
import type { PlacedRow } from '../board/layout/lay-out-row.js';
import { MEASURES } from '../board/layout/measures.js';
import { momentWords } from '../time/moment-words.js';
import { placeMarks } from './layout/place-marks.js';
import type { Preview } from './preview.js';

interface PreviewLayerProps {
  readonly placed: PlacedRow;
  readonly preview: Preview;
  readonly axis: Axis;
  readonly zone: string;
}

/**
 * New places over a row while a move is tried: a heavy outline on tracing paper, with the hatch of the material; a promise that moves has a struck corner.
 * What they say is read out by the move's own block, so they are hidden from those who hear.
 */
export function PreviewLayer({ placed, preview, axis, zone }: PreviewLayerProps) {
  const { tried } = preview;
  const asked = placed.row.phases.some(({ id }) => id === tried.phaseId) && axis.x(tried.at);
  return (
    <svg className="preview" width={axis.width} height={placed.height} aria-hidden="true">
      {placeMarks(placed, preview, axis).map(({ phaseId, left, width, top, hatch, wait, picked, broken }) => (
        <g
          key={phaseId}
          className={picked ? 'mark mark-picked' : 'mark'}
          transform={`translate(${left} ${top + MEASURES.gateBand})`}
        >
          <rect className="mark-paper" width={width} height={MEASURES.barHeight} />
          <rect
            className={wait ? 'mark-outline mark-wait' : 'mark-outline'}
            width={width}
            height={MEASURES.barHeight}
            fill={(!wait && hatchFill(hatch)) || 'none'}
          />
          {broken && <path className="mark-broken" d="M-5 -4 5 6M5 -4 -5 6" />}
        </g>
      ))}
      {asked !== false && (
        <g className="asked">
          <path d={`M${asked} 0V${placed.height}`} />
          <text x={asked + 4} y={placed.height - 4}>
            {tried.way === 'fixed' ? 'at' : 'from'} {momentWords(tried.at, zone)}
          </text>
        </g>
      )}
    </svg>
  );
}
