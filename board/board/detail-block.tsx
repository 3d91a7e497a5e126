import type { BoardPhaseFragment } from '../api/documents.js';
import { GateSymbol } from '../draw/gate-symbol.js';
import { HatchSwatch } from '../draw/hatches.js';
import { PageLink } from '../routing/page-link.js';
import { stretchWords } from '../time/moment-words.js';
import { barTimes } from './layout/bar-times.js';
import { committedRule } from './layout/committed-rule.js';
import type { BoardData } from './layout/rows.js';
import { ReasonChain } from './reason-chain.js';
import { floatWords } from './words/float-words.js';
import { gateWords } from '../words/gate-words.js';
import { crewWords, phaseTitle, stateWords } from '../words/phase-words.js';

interface DetailBlockProps {
  readonly phase: BoardPhaseFragment | null;
  readonly board: BoardData;
  readonly zone: string;
}

/** What there is to say about the phase in focus, and why it sits where it sits. */
export function DetailBlock({ phase, board, zone }: DetailBlockProps) {
  return (
    <section
      className="block detail"
      id="detail"
      aria-label="Detail"
      tabIndex={0}
      onKeyDown={(event) => {
        if (event.key === 'Escape' && phase) document.getElementById(`bar-${phase.id}`)?.focus();
      }}
    >
      <h2 className="caption">Detail</h2>
      {phase ? (
        <Detail phase={phase} board={board} zone={zone} />
      ) : (
        <p>
          Point at a bar, or reach it with Tab and the arrow keys: here stand its dates, its crew and its
          reasons.
        </p>
      )}
    </section>
  );
}

function Detail({ phase, board, zone }: DetailBlockProps & { readonly phase: BoardPhaseFragment }) {
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
      <ReasonChain key={phase.id} phase={phase} />
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
