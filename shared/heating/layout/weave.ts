import type { Point } from '../../entry/geometry/point.js';
import type { Loop } from './bands.js';
import { hangOnSpine, type Hanging } from './hang-on-spine.js';
import { findOpening, JOIN_REACH, openedLoop, type Opening, type Row } from './join-loops.js';
import { splice, straightened } from './splice.js';
import type { Zone } from './zone.js';

/** How a loop is tied to what was laid before it. */
type Tie =
  | { readonly loop: Loop; readonly hanging: Hanging }
  | { readonly loop: Loop; readonly opening: Opening; readonly row: 1 | 2; readonly parentY: number };

/** A spine with all loops that can be tied to it, each once, in the order of tying. */
export interface Weave {
  readonly ties: readonly Tie[];
  /** Loops that nothing reaches. */
  readonly lost: number;
}

/** Ties loops to the spine: those that end beside it directly, then row by row those that lie beside a tied one. */
export function tieLoops(
  loops: readonly Loop[],
  spine: readonly Point[],
  zone: Zone,
  spacing: number,
  room: number,
): Weave {
  const ties: Tie[] = [];
  const rows: Row[] = level(spine);
  const waiting: Loop[] = [];
  for (const loop of loops) {
    const hanging = hangOnSpine(loop, spine, zone, spacing, room);
    if (!hanging) {
      waiting.push(loop);
      continue;
    }
    const hung = { ...loop, y1: hanging.at1.y, y2: hanging.at2.y };
    ties.push({ loop: hung, hanging });
    rows.push(...rowsOf(hung));
  }
  for (let found = true; found;) {
    found = false;
    for (const loop of [...waiting]) {
      const tied = tieToRow(loop, rows, spacing);
      if (!tied) continue;
      ties.push(tied.tie);
      rows.push(...tied.rows);
      waiting.splice(waiting.indexOf(loop), 1);
      found = true;
    }
  }
  return { ties, lost: waiting.length };
}

const rowsOf = ({ x1, x2, y1, y2 }: Loop): Row[] => [y1, y2].map((y) => ({ y, span: [x1, x2], opened: [] }));

/** The stretches of the spine that lie along the rows. */
const level = (spine: readonly Point[]): Row[] =>
  spine.slice(1).flatMap((b, i): Row[] => {
    const a = spine[i]!;
    return Math.abs(a.y - b.y) > 1e-6
      ? []
      : [{ y: a.y, span: [Math.min(a.x, b.x), Math.max(a.x, b.x)], opened: [] }];
  });

function tieToRow(loop: Loop, rows: readonly Row[], spacing: number): { tie: Tie; rows: Row[] } | null {
  const own = rowsOf(loop);
  for (const number of [1, 2] as const) {
    const mine = own[number - 1]!;
    for (const row of rows) {
      const apart = number === 1 ? mine.y - row.y : row.y - mine.y;
      if (apart < spacing * (1 - 1e-6) || apart > JOIN_REACH * spacing) continue;
      const opening = findOpening(row, mine, spacing, Math.max(apart, loop.y2 - loop.y1, 1.5 * spacing));
      if (!opening) continue;
      row.opened.push([opening.from, opening.to]);
      mine.opened.push([opening.from, opening.to]);
      return { tie: { loop, opening, row: number, parentY: row.y }, rows: own };
    }
  }
  return null;
}

/**
 * The line of the cable through a field. `pullBack` shortens every loop at each end that is not open, in; it changes the
 * length by twice as much for each and nothing else.
 */
export function weaveLine(spine: readonly Point[], { ties }: Weave, pullBack: number): Point[] {
  let line: Point[] = [...spine];
  for (const tie of ties) {
    const { loop } = tie;
    const short = { ...loop, x1: loop.x1 + pullBack, x2: loop.x2 - pullBack };
    const next =
      'hanging' in tie
        ? splice(line, tie.hanging.at1, tie.hanging.at2, tip(short, tie.hanging.end))
        : splice(
            line,
            { x: tie.opening.from, y: tie.parentY },
            { x: tie.opening.to, y: tie.parentY },
            openedLoop(short, tie.row, tie.opening),
          );
    if (next) line = next;
  }
  return straightened(line);
}

/** The far end of a loop that is open at `end`. */
function tip({ x1, x2, y1, y2 }: Loop, end: 'x1' | 'x2'): Point[] {
  const x = end === 'x2' ? x1 : x2;
  return [
    { x, y: y1 },
    { x, y: y2 },
  ];
}
