import { useCallback, useEffect, useMemo, useReducer, useRef, useState } from 'react';
import { flushSync } from 'react-dom';
import { HatchDefinitions } from '../draw/hatches.js';
import { NewestMoveDocument } from '../api/documents.js';
import { useQuery } from '../api/use-query.js';
import { MoveBlock, saysSomething } from '../moving/move-block.js';
import { useMoving } from '../moving/use-moving.js';
import { usePlanner } from '../planning/use-planner.js';
import { OutcomeList } from '../sends/outcome-list.js';
import { useSignedIn } from '../session/session.js';
import { BoardTable } from './board-table.js';
import { Chart } from './chart.js';
import type { ViewChanges } from './board-view.js';
import { EmptyBoard } from './empty-board.js';
import { DetailBlock } from './detail-block.js';
import { FiltersBlock } from './filters-block.js';
import { type Filters, narrowed } from './layout/filters.js';
import { type BoardRow, rowsByCrew, rowsByJob } from './layout/rows.js';
import { barStop, readStop } from './layout/stops.js';
import { Legend } from './legend.js';
import { PlanningBlocks } from '../planning/planning-blocks.js';
import { NotesBlock } from './notes-block.js';
import { ProposalBlock } from './proposal-block.js';
import { TitleBlock } from './title-block.js';
import { useBoard } from './use-board.js';
import { usePrinting } from './use-printing.js';
import { withAnswer } from './weather-of.js';
import './board-page.css';

const NO_WEATHER: Parameters<typeof withAnswer>[0] = { from: '', of: new Map() };

const countOf = (rows: readonly BoardRow[]): number =>
  rows.reduce((sum, { phases }) => sum + phases.length, 0);

/** The office's board: one sheet with its title block, the drawing, and the blocks of notes below it. */
export function BoardPage() {
  const { me, company } = useSignedIn();
  const { view, days, board, error } = useBoard(company.zone);
  const changeView = useRef(view.change);
  const [weather, addWeather] = useReducer(withAnswer, NO_WEATHER);
  const [focused, setFocused] = useState<string | null>(null);
  const [hovered, setHovered] = useState<string | null>(null);
  // By what the address says when it is called, so that it stays the same while that changes.
  const onView = useCallback((changes: ViewChanges) => changeView.current(changes), []);
  useEffect(() => {
    changeView.current = view.change;
  });
  // Only what is in sight is drawn, and what has the focus: it is drawn first, then gone to.
  const goTo = useCallback((stop: string) => {
    flushSync(() => setFocused(stop));
    document.getElementById(stop)?.focus();
  }, []);
  // What the keyboard goes to is what is looked at, wherever the pointer was left.
  const onFocus = useCallback((stop: string) => {
    setFocused(stop);
    setHovered(null);
  }, []);
  const printing = usePrinting();
  const office = me.role === 'office';
  const planned = usePlanner(office);
  const newest = useQuery(NewestMoveDocument, {}, { when: office }).data?.newestMove ?? null;
  const moving = useMoving(board, planned.here, newest);
  const all = useMemo(
    () => (board ? (view.rows === 'job' ? rowsByJob(board) : rowsByCrew(board)) : []),
    [board, view.rows],
  );
  const filters = JSON.stringify(view.filters);
  const rows = useMemo(
    () => (board ? narrowed(all, board, JSON.parse(filters) as Filters) : []),
    [all, board, filters],
  );
  // Weather of other days is not drawn under these.
  const weatherOf = board && weather.from === board.from ? weather.of : NO_WEATHER.of;
  const stop = readStop(moving.tried ? barStop(moving.tried.phaseId) : (hovered ?? focused));
  const phase = board?.phases.find(({ id }) => stop?.kind === 'bar' && id === stop.phaseId) ?? null;
  const empty = board?.jobs.length === 0;
  const asTable = view.asTable || printing;
  const showsMove = !asTable && saysSomething(moving, newest);

  return (
    <div className="sheet">
      <HatchDefinitions />
      <TitleBlock view={view} days={days} board={board} />
      <main className="sheet-main">
        {error && <p className="fault sheet-fault">{error.message}</p>}
        {!board && !error && <p className="sheet-fault">Drawing the board.</p>}
        {board && empty && <EmptyBoard role={me.role} />}
        {board && !empty && !printing && (
          <FiltersBlock view={view} board={board} left={countOf(rows)} all={countOf(all)} />
        )}
        {board && !empty && asTable && (
          <BoardTable rows={rows} board={board} by={view.rows} zone={company.zone} />
        )}
        {board && !empty && !asTable && (
          <Chart
            rows={rows}
            board={board}
            weatherOf={weatherOf}
            onWeather={addWeather}
            byKind={view.limits}
            days={days}
            span={view.span}
            from={view.from}
            onView={onView}
            whole={view.whole}
            by={view.rows}
            zone={company.zone}
            focused={focused}
            onFocus={onFocus}
            goTo={goTo}
            onHover={setHovered}
            moving={moving}
          />
        )}
        {board && !empty && !asTable && <Legend />}
        <OutcomeList />
        {board && !empty && (
          <div className={showsMove ? 'blocks blocks-moving' : 'blocks'}>
            {showsMove && <MoveBlock moving={moving} newest={newest} zone={company.zone} />}
            {!asTable && (
              <DetailBlock
                stop={stop}
                focused={focused}
                board={board}
                weatherOf={weatherOf}
                days={days}
                zone={company.zone}
                moving={moving}
              />
            )}
            <ProposalBlock proposal={board.openProposal} zone={company.zone} />
            <NotesBlock board={board} goTo={goTo} />
          </div>
        )}
        {board && !empty && !asTable && (
          <PlanningBlocks board={board} phase={phase} zone={company.zone} planned={planned} />
        )}
      </main>
    </div>
  );
}
