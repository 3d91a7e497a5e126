import { useLive } from '../api/live.js';
import { ENTER_JOB } from '../routing/page-of.js';
import { PageLink } from '../routing/page-link.js';
import { ROLE_WORDS } from '../session/role-words.js';
import { useSession, useSignedIn } from '../session/session.js';
import { dateWords, momentWords } from '../time/moment-words.js';
import type { Day } from '../time/zone-days.js';
import type { BoardView } from './board-view.js';
import { SPANS, type Span, spanName, zoomed } from './layout/spans.js';
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
  const at = days.findIndex(({ date }) => date === view.from);
  const first = days[at]?.start ?? 0;
  const last = days[Math.min(at + view.span, days.length) - 1]?.start ?? first;
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
          {at < 0 ? '–' : `${dateWords(first, company.zone)} to ${dateWords(last, company.zone)}`}
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
          <label className="title-span">
            show{' '}
            <select
              value={view.span}
              onChange={({ target }) => view.change({ span: Number(target.value) as Span })}
            >
              {SPANS.map(({ days: count, name }) => (
                <option key={count} value={count}>
                  {name}
                </option>
              ))}
            </select>
          </label>
          <ZoomButton view={view} direction={1} sign="+" words="closer" />
          <ZoomButton view={view} direction={-1} sign="−" words="wider" />
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
      <div className="title-cell title-person">
        <span className="caption">
          {me.name}, {ROLE_WORDS[me.role]}
        </span>
        <div className="choices">
          {me.role === 'office' && <PageLink to={ENTER_JOB}>enter a job</PageLink>}
          <PageLink to="/site">site sheet</PageLink>
          <button type="button" className="act" onClick={() => void signOut()}>
            sign out
          </button>
        </div>
      </div>
    </header>
  );
}

interface ZoomButtonProps {
  readonly view: BoardView;
  readonly direction: 1 | -1;
  readonly sign: string;
  readonly words: string;
}

function ZoomButton({ view, direction, sign, words }: ZoomButtonProps) {
  const next = zoomed(view.span, direction);
  return (
    <button
      type="button"
      className="act"
      aria-label={next === view.span ? words : `${words}: ${spanName(next)}`}
      disabled={next === view.span}
      onClick={() => view.change({ span: next })}
    >
      <span aria-hidden="true">{sign}</span>
    </button>
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
