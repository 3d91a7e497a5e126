import { hatchFill } from '../draw/hatches.js';
import type { PlacedBar } from './layout/lay-out-row.js';
import { MEASURES } from './layout/measures.js';

/**
 * The body of a bar. Work carries the hatch of its material, a wait is an empty dotted outline. Not started: thin line.
 * Started: heavy line, and darker paper over a base line up to now. Done: both along the whole bar. Weather unknown:
 * dashed outline. A critical phase has a second line along its top.
 */
export function BarDrawing({ bar }: { readonly bar: PlacedBar }) {
  const { phase, width, past } = bar;
  const { barHeight: height } = MEASURES;
  const wait = phase.durationKind === 'elapsed';
  const fill = wait ? null : hatchFill(phase.hatch);
  const heavy = phase.state === 'started';
  const inset = heavy ? 1.25 : 0.6;
  const box = { x: inset, y: inset, width: Math.max(1, width - 2 * inset), height: height - 2 * inset };
  const ground = phase.state === 'done' ? width : past;
  const unknown = phase.planned?.weatherUnknown && phase.state === 'waiting';
  return (
    <svg className={`bar-drawing bar-${phase.state}`} width={width} height={height} aria-hidden="true">
      {ground > 0 && <rect className="bar-past" x="0" y="0" width={ground} height={height} />}
      <rect
        className={wait ? 'bar-outline bar-wait' : unknown ? 'bar-outline bar-unknown' : 'bar-outline'}
        {...box}
        fill={fill ?? 'none'}
        strokeWidth={heavy ? 2.5 : 1.2}
      />
      {phase.planned?.critical && phase.state !== 'done' && (
        <line className="bar-critical" x1="0" x2={width} y1="3.5" y2="3.5" />
      )}
      {ground > 0 && <line className="bar-base" x1="0" x2={ground} y1={height - 1.5} y2={height - 1.5} />}
    </svg>
  );
}
