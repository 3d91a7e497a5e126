import { useLive } from '../api/live.js';
import { PageLink } from '../routing/page-link.js';
import { ROLE_WORDS } from '../session/role-words.js';
import { useSession, useSignedIn } from '../session/session.js';
import { dateWords, momentWords } from '../time/moment-words.js';
import type { Day } from '../time/zone-days.js';
import { type BoardView, WEEKS } from './board-view.js';
import type { BoardData } from './layout/rows.js';
import './title-block.css';

interface TitleBlockProps {
  readonly view: BoardView;
  readonly days: readonly Day[];
  readonly board: BoardData | null;
}

/** The title block of the sheet: whose it is, what it shows, and the choices of what to show. */
export function TitleBlock({ view, days, board }: TitleBlockProps) {
  const { me, company } = useSignedIn();
  const { signOut } = useSession();
  const { connected } = useLive();
  const first = days[0]?.start ?? 0;
  const last = days.at(-1)?.start ?? 0;
  return (
    <header className="title-block">
      <div className="title-cell">
        <span className="caption">{company.name}</span>
        <h1>Schedule board</h1>
      </div>
      <div className="title-cell title-rows" role="group" aria-label="Rows">
        <span className="caption">Rows</span>
        <div className="choices">
          {(['job', 'crew'] as const).map((rows) => (
            <Choice key={rows} on={view.rows === rows} choose={() => view.change({ rows })}>
              by {rows}
            </Choice>
          ))}
          <Choice on={view.asTable} choose={() => view.change({ asTable: !view.asTable })}>
            as a table
          </Choice>
          {view.rows === 'job' && !view.asTable && (
            <Choice on={view.limits} choose={() => view.change({ limits: !view.limits })}>
              weather limits
            </Choice>
          )}
        </div>
      </div>
      <div className="title-cell title-days" role="group" aria-label="Days">
        <span className="caption">
          {dateWords(first, company.zone)} to {dateWords(last, company.zone)}
        </span>
        <div className="choices">
          <button type="button" className="act" onClick={() => view.step(-1)}>
            <span aria-hidden="true">◁ </span>earlier
          </button>
          <button type="button" className="act" onClick={() => view.step(0)}>
            today
          </button>
          <button type="button" className="act" onClick={() => view.step(1)}>
            later<span aria-hidden="true"> ▷</span>
          </button>
          {WEEKS.map((weeks) => (
            <Choice key={weeks} on={view.weeks === weeks} choose={() => view.change({ weeks })}>
              {weeks} weeks
            </Choice>
          ))}
        </div>
      </div>
      <div className="title-cell">
        <span className="caption">Plan no.</span>
        <span>
          {board ? `${board.planNumber}, ${momentWords(Date.parse(board.now), company.zone)}` : '–'}
        </span>
      </div>
      <div className="title-cell">
        <span className="caption">Line</span>
        <span role="status">{connected ? 'live' : 'not connected'}</span>
      </div>
      <div className="title-cell">
        <span className="caption">
          {me.name}, {ROLE_WORDS[me.role]}
        </span>
        <div className="choices">
          <PageLink to="/site">site sheet</PageLink>
          <button type="button" className="act" onClick={() => void signOut()}>
            sign out
          </button>
        </div>
      </div>
    </header>
  );
}

interface ChoiceProps {
  readonly on: boolean;
  readonly choose: () => void;
  readonly children: React.ReactNode;
}

function Choice({ on, choose, children }: ChoiceProps) {
  return (
    <button type="button" className="act" aria-pressed={on} onClick={choose}>
      {children}
    </button>
  );
}
