import type { BoardPhaseFragment } from '../../api/documents.js';
import type { Axis } from './axis.js';
import { barTimes, type BarTimes } from './bar-times.js';
import { committedRule } from './committed-rule.js';
import { type GateMark, gateMarks } from './gates.js';
import { type LabelPlace, placeLabel } from './labels.js';
import { type Extent, packLanes } from './lanes.js';
import { LANE, MEASURES } from './measures.js';
import type { BoardRow, RowsBy } from './rows.js';

/** Under this width of a day a bar has no drawing, gates or name: they would not be seen. */
export const PLAIN = 20;

/** A phase where it is drawn. Distances are pixels from the left edge of the days and the top of the row. */
export interface PlacedBar {
  readonly phase: BoardPhaseFragment;
  readonly times: BarTimes;
  readonly left: number;
  readonly width: number;
  /** Width of what can be pressed, never less than a target's least size. */
  readonly reach: number;
  readonly top: number;
  /** Whether the phase goes on beyond the days shown. */
  readonly cutLeft: boolean;
  readonly cutRight: boolean;
  /** Drawn as a plain stretch: days are too narrow for more. */
  readonly plain: boolean;
  readonly name: string;
  readonly labelPlace: LabelPlace;
  readonly labelRoom: number;
  readonly rule: Extent | null;
  readonly gates: readonly GateMark[];
  /** How much of it is past, in pixels, for a started phase. */
  readonly past: number;
}

/** A row with its bars placed. */
export interface PlacedRow {
  readonly row: BoardRow;
  readonly bars: readonly PlacedBar[];
  readonly height: number;
}

/** Places the bars of a row under a strip of so many pixels, in a row no lower than `least`; those outside the days are left out. */
export function layOutRow(
  row: BoardRow,
  axis: Axis,
  now: number,
  by: RowsBy,
  strip = 0,
  least: number = MEASURES.leastRow,
): PlacedRow {
  const seen = row.phases.flatMap((phase) => {
    const times = barTimes(phase, now);
    return times && touches(times, axis) ? [{ phase, times, ...reachOf(times, axis) }] : [];
  });
  seen.sort((a, b) => a.times.from - b.times.from || a.phase.position - b.phase.position);
  const extents = seen.map(({ left, reach }) => ({ left, right: left + reach + MEASURES.between }));
  const { lanes, count } = packLanes(extents);
  const firstLane = MEASURES.rowPadding + strip;
  const bars = seen.map(({ phase, times, left, width, reach }, index): PlacedBar => {
    const nextLeft = nextInLane(extents, lanes, index, axis.width);
    const name = by === 'crew' ? `${phase.job.number} ${phase.name}` : phase.name;
    const right = left + Math.max(width, reach);
    return {
      phase,
      times,
      left,
      width,
      reach,
      top: firstLane + (lanes[index] ?? 0) * LANE,
      cutLeft: times.from < axis.start,
      cutRight: times.to > axis.end,
      plain: axis.dayWidth < PLAIN,
      name,
      labelPlace: axis.dayWidth < PLAIN ? 'none' : placeLabel(name, { left, right: left + width }, nextLeft),
      labelRoom: nextLeft - right,
      rule: axis.dayWidth < PLAIN ? null : ruleOf(phase, times, axis),
      gates: axis.dayWidth < PLAIN ? [] : gateMarks(phase.holdPoints),
      past: phase.state === 'started' ? Math.max(0, Math.min(width, axis.x(now) - left)) : 0,
    };
  });
  const height = firstLane + Math.max(1, count) * LANE + MEASURES.rowPadding;
  return { row, bars, height: Math.max(height, least) };
}

const touches = ({ from, to }: BarTimes, axis: Axis): boolean => to >= axis.start && from < axis.end;

/** Left edge and widths of a bar; near the right edge the reach grows to the left instead of out of the sheet. */
function reachOf({ from, to }: BarTimes, axis: Axis): { left: number; width: number; reach: number } {
  const width = Math.max(3, axis.x(to) - axis.x(from));
  const reach = Math.max(width, MEASURES.leastTarget);
  return { left: Math.max(0, Math.min(axis.x(from), axis.width - reach)), width, reach };
}

function nextInLane(
  extents: readonly Extent[],
  lanes: readonly number[],
  index: number,
  edge: number,
): number {
  const next = lanes.findIndex((lane, other) => other > index && lane === lanes[index]);
  return next === -1 ? edge : (extents[next]?.left ?? edge);
}

function ruleOf(phase: BoardPhaseFragment, times: BarTimes, axis: Axis): Extent | null {
  const rule = committedRule(phase, times);
  if (!rule || !touches(rule, axis)) return null;
  return { left: axis.x(rule.from), right: Math.max(axis.x(rule.to), axis.x(rule.from) + 3) };
}
