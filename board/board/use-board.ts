import { useEffect, useState } from 'react';
import { BoardDocument, BoardWeatherDocument, type BoardWeatherQuery } from '../api/documents.js';
import type { AskError } from '../api/ask.js';
import { useQuery } from '../api/use-query.js';
import { type Day, daysFrom } from '../time/zone-days.js';
import { type BoardView, useBoardView } from './board-view.js';
import type { BoardData } from './layout/rows.js';

/** What the board page draws from. */
export interface BoardState {
  readonly view: BoardView;
  readonly days: readonly Day[];
  readonly board: BoardData | null;
  readonly weather: BoardWeatherQuery['board'] | null;
  readonly error: AskError | null;
}

/** Asks for the days in view. What day it is, the service says: its clock dates the plan. */
export function useBoard(zone: string): BoardState {
  const [now, setNow] = useState(Date.now);
  const view = useBoardView(now, zone);
  const days = daysFrom(view.from, view.weeks * 7, zone);
  const range = { from: iso(days[0]?.start), to: iso(days.at(-1)?.end) };
  const { data, error } = useQuery(BoardDocument, range);
  const weather = useQuery(BoardWeatherDocument, range);
  const board = data?.board ?? null;
  useEffect(() => {
    if (board) setNow(Date.parse(board.now));
  }, [board]);
  return { view, days, board, weather: weather.data?.board ?? null, error };
}

const iso = (moment: number | undefined): string => new Date(moment ?? 0).toISOString();
