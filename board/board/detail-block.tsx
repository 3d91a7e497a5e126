import type { BoardPhaseFragment } from '../api/documents.js';
import { GateSymbol } from '../draw/gate-symbol.js';
import { HatchSwatch } from '../draw/hatches.js';
import { PageLink } from '../routing/page-link.js';
import { stretchWords } from '../time/moment-words.js';
import { barTimes } from './layout/bar-times.js';
import { committedRule } from './layout/committed-rule.js';
import type { Day } from '../time/zone-days.js';
import { DayDetail } from '../weather/day-detail.js';
import { PhaseWeather } from '../weather/phase-weather.js';
import { MoveForm } from '../moving/move-form.js';
import type { Moving } from '../moving/use-moving.js';
import type { BoardData } from './layout/rows.js';
import type { StopOf } from './layout/stops.js';
import { ReasonChain } from './reason-chain.js';
import type { WeatherOf } from './weather-of.js';
import { floatWords } from './words/float-words.js';
import { gateWords } from '../words/gate-words.js';
import { crewWords, phaseTitle, stateWords } from '../words/phase-words.js';

interface DetailBlockProps {
  /** What is looked at, and the id of what has the focus, to which Escape leads back. */
  readonly stop: StopOf | null;
  readonly focused: string | null;
  readonly board: BoardData;
  readonly weatherOf: WeatherOf;
  readonly days: readonly Day[];
  readonly zone: string;
  readonly moving: Moving;
}

/** What there is to say about the phase in focus and why it sits where it sits, or about a day of the weather. */
export function DetailBlock({ stop, focused, board, weatherOf, days, zone, moving }: DetailBlockProps) {
  const phase = stop?.kind === 'bar' ? board.phases.find(({ id }) => id === stop.phaseId) : undefined;
  const job = stop?.kind === 'day' ? board.jobs.find(({ id }) => id === stop.jobId) : undefined;
  const site = job && weatherOf.get(job.id);
  const day = stop?.kind === 'day' ? days.find(({ date }) => date === stop.date) : undefined;
  return (
    <section
      className="block detail"
      id="detail"
      aria-label="Detail"
      tabIndex={0}
      onKeyDown={(event) => {
        if (event.key === 'Escape' && focused) document.getElementById(focused)?.focus();
      }}
    >
      <h2 className="caption">Detail</h2>
      {phase && <Detail phase={phase} board={board} zone={zone} moving={moving} />}
      {job && site && day && (
        <DayDetail job={job} site={site} day={day} now={Date.parse(board.now)} zone={zone} />
      )}
      {!phase && !(site && day) && (
        <p>
          Point at a bar or at a day of the weather, or reach it with Tab and the arrow keys: here stand
          dates, crew and reasons, and what the weather closes.
        </p>
      )}
    </section>
  );
}

interface DetailProps {
  readonly phase: BoardPhaseFragment;
  readonly board: BoardData;
  readonly zone: string;
  readonly moving: Moving;
}

function Detail({ phase, board, zone, moving }: DetailProps) {
  const times = barTimes(phase, Date.parse(board.now));
  const rule = times && committedRule(phase, times);
  return (
    <div className="detail-columns">
      <div>
        <h3 className="detail-title">
          <HatchSwatch hatch={phase.hatch} wait={phase.durationKind === 'elapsed'} />
          <span>
            <PageLink to={`/jobs/${phase.job.number}`}>{phase.job.number}</PageLink> {phaseTitle(phase)}
          </span>
        </h3>
        <dl className="facts">
          <Fact name="State">{stateWords(phase)}</Fact>
          {times && <Fact name="Dates">{stretchWords(times.from, times.to, zone)}</Fact>}
          <Fact name="Crew">{crewWords(phase)}</Fact>
          {rule && <Fact name="Committed">{stretchWords(rule.from, rule.to, zone)}</Fact>}
          {phase.commitment && !rule && phase.state !== 'done' && (
            <Fact name="Committed">to these dates</Fact>
          )}
          {phase.planned && phase.state !== 'done' && (
            <Fact name="Can slip">{floatWords(phase.planned)}</Fact>
          )}
          {phase.planned?.weatherUnknown && phase.state === 'waiting' && (
            <Fact name="Weather">unknown: the forecast does not reach that far</Fact>
          )}
        </dl>
        <MoveForm phase={phase} moving={moving} board={board} zone={zone} />
        {phase.holdPoints.length > 0 && (
          <ul className="gate-list">
            {phase.holdPoints.map((gate) => (
              <li key={gate.id}>
                <GateSymbol kind={gate.kind} state={gate.state} /> {gateWords(gate)}
              </li>
            ))}
          </ul>
        )}
      </div>
      <div>
        <ReasonChain key={phase.id} phase={phase} />
        <PhaseWeather key={`weather ${phase.id}`} phase={phase} now={Date.parse(board.now)} zone={zone} />
      </div>
    </div>
  );
}

function Fact({ name, children }: { readonly name: string; readonly children: React.ReactNode }) {
  return (
    <div>
      <dt>{name}</dt>
      <dd>{children}</dd>
    </div>
  );
}
