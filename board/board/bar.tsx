import { memo } from 'react';
import { GateSymbol } from '../draw/gate-symbol.js';
import { CommittedRule } from './committed-rule-mark.js';
import { BarDrawing } from './bar-drawing.js';
import type { PlacedBar } from './layout/lay-out-row.js';
import { LANE } from './layout/measures.js';
import { barStop } from './layout/stops.js';
import { barWords } from './words/bar-words.js';

interface BarProps {
  readonly bar: PlacedBar;
  readonly zone: string;
  readonly tabStop: boolean;
  readonly selected: boolean;
  readonly onFocus: (stop: string) => void;
  readonly onHover: (stop: string | null) => void;
  /** How it is drawn while a move is tried: its old place, or as it is. */
  readonly ghost: boolean;
  readonly movable: boolean;
}

/** A phase on the board: its drawing, its name where there is room, its gates, and all of it in words. */
export const Bar = memo(function Bar({
  bar,
  zone,
  tabStop,
  selected,
  onFocus,
  onHover,
  ghost,
  movable,
}: BarProps) {
  const { phase, left, top, width, reach, rule, gates, labelPlace, labelRoom, name } = bar;
  const stop = barStop(phase.id);
  return (
    <div
      role="gridcell"
      id={stop}
      data-stop={stop}
      className={`bar${bar.plain ? plainClass(bar) : ''}${ghost ? ' bar-ghost' : ''}${movable ? ' bar-movable' : ''}`}
      style={{
        left,
        top,
        width: reach,
        height: LANE,
        ...(bar.plain && { '--drawn': `${width}px` }),
      }}
      tabIndex={tabStop ? 0 : -1}
      aria-label={barWords(bar, zone)}
      aria-selected={selected}
      aria-describedby={selected ? 'detail-reasons' : undefined}
      onFocus={() => onFocus(stop)}
      onMouseEnter={() => onHover(stop)}
      onMouseLeave={() => onHover(null)}
    >
      {gates.map(({ end, shown, count }) => (
        <span
          key={end}
          className={`bar-gate bar-gate-${end}`}
          style={end === 'finish' ? { left: Math.max(12, width - 12) } : undefined}
        >
          <GateSymbol kind={shown.kind} state={shown.state} />
          {count > 1 && reach > 60 && <span data-count={count} />}
        </span>
      ))}
      {!bar.plain && <BarDrawing bar={bar} />}
      {labelPlace !== 'none' && (
        <span
          className={`bar-label bar-label-${labelPlace}`}
          style={
            labelPlace === 'inside'
              ? { maxWidth: width - 8 }
              : { left: Math.max(width, reach), maxWidth: labelRoom }
          }
        >
          {name}
        </span>
      )}
      {rule && <CommittedRule rule={rule} bar={{ left, right: left + width }} />}
    </div>
  );
});

/** How a plain bar tells its state without a drawing. */
function plainClass({ phase }: PlacedBar): string {
  const wait = phase.durationKind === 'elapsed' ? ' bar-plain-wait' : '';
  const critical = phase.planned?.critical && phase.state !== 'done' ? ' bar-plain-critical' : '';
  return ` bar-plain bar-plain-${phase.state}${wait}${critical}`;
}
