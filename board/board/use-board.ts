import { useEffect, useMemo, useRef, useState } from 'react';
import { BoardDocument } from '../api/documents.js';
import type { AskError } from '../api/ask.js';
import { useQuery } from '../api/use-query.js';
import { dateAt, type Day, daysFrom } from '../time/zone-days.js';
import { type BoardView, useBoardView } from './board-view.js';
import type { BoardData } from './layout/rows.js';
import { type Sheet, sheetFor } from './layout/sheet.js';

const DAY = 24 * 3_600_000;

/** What the board page draws from. */
export interface BoardState {
  readonly view: BoardView;
  /** The days of the sheet, of which some are in view. */
  readonly days: readonly Day[];
  readonly board: BoardData | null;
  readonly error: AskError | null;
}

/** Asks for the days in view and those around them. What day it is, the service says: its clock dates the plan. */
export function useBoard(zone: string): BoardState {
  const [now, setNow] = useState(Date.now);
  const view = useBoardView(now, zone);
  const before = useRef<Sheet | null>(null);
  const sheet = sheetFor(view.from, view.span, before.current);
  useEffect(() => {
    before.current = sheet;
  });
  const range = useMemo(() => rangeOf(sheet.from, sheet.days, zone), [sheet.from, sheet.days, zone]);
  const { data, error } = useQuery(BoardDocument, range);
  const board = data?.board ?? null;
  useEffect(() => {
    if (board) setNow(Date.parse(board.now));
  }, [board]);
  const { from, to } = board ?? range;
  const days = useMemo(() => daysOf(from, to, zone), [from, to, zone]);
  return { view, days, board, error };
}

/** The first moment of some days, and the end of them. */
function rangeOf(date: string, count: number, zone: string): { from: string; to: string } {
  const days = daysFrom(date, count, zone);
  return { from: iso(days[0]?.start), to: iso(days.at(-1)?.end) };
}

/** The days that an answer covers: while others are asked for, the old ones are drawn with what belongs to them. */
function daysOf(from: string, to: string, zone: string): Day[] {
  const [first, end] = [Date.parse(from), Date.parse(to)];
  // A clock change makes a day an hour longer or shorter, never half a day.
  return daysFrom(dateAt(first, zone), Math.round((end - first) / DAY), zone);
}

const iso = (moment: number | undefined): string => new Date(moment ?? 0).toISOString();
