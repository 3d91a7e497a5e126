import { useMemo, useReducer, useState } from 'react';
import { HatchDefinitions } from '../draw/hatches.js';
import { OutcomeList } from '../sends/outcome-list.js';
import { useSignedIn } from '../session/session.js';
import { BoardTable } from './board-table.js';
import { Chart } from './chart.js';
import { DetailBlock } from './detail-block.js';
import { rowsByCrew, rowsByJob } from './layout/rows.js';
import { readStop } from './layout/stops.js';
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

/** The office's board: one sheet with its title block, the drawing, and the blocks of notes below it. */
export function BoardPage() {
  const { company } = useSignedIn();
  const { view, days, board, error } = useBoard(company.zone);
  const [weather, addWeather] = useReducer(withAnswer, NO_WEATHER);
  const [focused, setFocused] = useState<string | null>(null);
  const [hovered, setHovered] = useState<string | null>(null);
  const printing = usePrinting();
  const rows = useMemo(
    () => (board ? (view.rows === 'job' ? rowsByJob(board) : rowsByCrew(board)) : []),
    [board, view.rows],
  );
  // Weather of other days is not drawn under these.
  const weatherOf = board && weather.from === board.from ? weather.of : NO_WEATHER.of;
  const stop = readStop(hovered ?? focused);
  const phase = board?.phases.find(({ id }) => stop?.kind === 'bar' && id === stop.phaseId) ?? null;
  const asTable = view.asTable || printing;

  return (
    <div className="sheet">
      <HatchDefinitions />
      <TitleBlock view={view} days={days} board={board} />
      <main className="sheet-main">
        {error && <p className="fault sheet-fault">{error.message}</p>}
        {!board && !error && <p className="sheet-fault">Drawing the board.</p>}
        {board && asTable && <BoardTable rows={rows} board={board} by={view.rows} zone={company.zone} />}
        {board && !asTable && (
          <Chart
            rows={rows}
            board={board}
            weatherOf={weatherOf}
            onWeather={addWeather}
            byKind={view.limits}
            days={days}
            by={view.rows}
            zone={company.zone}
            focused={focused}
            onFocus={setFocused}
            onHover={setHovered}
          />
        )}
        {board && !asTable && <Legend />}
        <OutcomeList />
        {board && (
          <div className="blocks">
            {!asTable && (
              <DetailBlock
                stop={stop}
                focused={focused}
                board={board}
                weatherOf={weatherOf}
                days={days}
                zone={company.zone}
              />
            )}
            <ProposalBlock proposal={board.openProposal} zone={company.zone} />
            <NotesBlock board={board} onShow={setFocused} />
          </div>
        )}
        {board && !asTable && <PlanningBlocks board={board} phase={phase} zone={company.zone} />}
      </main>
    </div>
  );
}
