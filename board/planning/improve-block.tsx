import { useState } from 'react';
import { NewestImprovementDocument, type NewestImprovementQuery } from '../api/documents.js';
import { useQuery } from '../api/use-query.js';
import { useSends } from '../sends/sends.js';
import { useDecide } from '../sends/use-decide.js';
import { isoWords } from '../time/moment-words.js';
import { OfferTables } from './offer-tables.js';
import { TableHead } from './table-head.js';

type Search = NonNullable<NewestImprovementQuery['newestImprovement']>;

const ENDED: Readonly<Record<string, string>> = {
  accepted: 'Its proposal was accepted; the plan follows it.',
  dropped: 'Its proposal was dropped.',
  stopped: 'It was stopped; what it had found was thrown away.',
};

/** A search for a better plan: started, watched, stopped; and what it offers beside what is in force. */
export function ImproveBlock({ zone }: { readonly zone: string }) {
  const { data, error } = useQuery(NewestImprovementDocument, {}, { searches: true });
  const search = data?.newestImprovement ?? null;
  const atWork = search?.state === 'waiting' || search?.state === 'running';
  return (
    <section className="block improve" aria-label="Better plan" tabIndex={0}>
      <h2 className="caption">Better plan</h2>
      {error && <p className="fault">{error.message}</p>}
      {search && atWork ? <AtWork search={search} /> : <Start />}
      {search && !atWork && search.state !== 'offered' && (
        <p>
          The last search made {search.schedules} plans. {search.message ?? ENDED[search.state]}
        </p>
      )}
      {search?.state === 'offered' && <Offer search={search} zone={zone} />}
    </section>
  );
}

function Start() {
  const { send } = useSends();
  const [seconds, setSeconds] = useState(20);
  return (
    <>
      <p>A search tries many orders of work. It changes nothing by itself: what it finds is proposed.</p>
      <p className="try-form">
        <label>
          Seconds{' '}
          <input
            type="number"
            min={1}
            max={600}
            value={seconds}
            onChange={(event) => setSeconds(event.target.valueAsNumber)}
          />
        </label>
        <button
          type="button"
          className="act act-strong"
          disabled={!(seconds >= 1 && seconds <= 600)}
          onClick={() =>
            void send('startImprovement', 'Look for a better plan', { seconds: Math.round(seconds) })
          }
        >
          Look for a better plan
        </button>
      </p>
    </>
  );
}

function AtWork({ search }: { readonly search: Search }) {
  const { send } = useSends();
  const spent = Math.min(search.seconds, search.progress?.seconds ?? 0);
  const stop = (how: 'keep' | 'discard', word: string) =>
    void send('stopImprovement', word, { improvementId: search.id, how });
  return (
    <>
      <p role="status">
        {search.state === 'waiting' ? 'Waits for a worker.' : `${search.schedules} plans made`}
        {search.progress?.withinPercent !== null &&
          search.progress !== null &&
          `; the best is within ${percent(search.progress.withinPercent)} of the bound`}
      </p>
      <progress aria-label="Time searched" max={search.seconds} value={spent} />
      <p className="decide">
        <button
          type="button"
          className="act"
          disabled={search.stopping}
          onClick={() => stop('keep', 'Stop and propose the best')}
        >
          Stop and propose the best
        </button>
        <button
          type="button"
          className="act"
          disabled={search.stopping}
          onClick={() => stop('discard', 'Stop and throw away')}
        >
          Stop and throw away
        </button>
      </p>
    </>
  );
}

function Offer({ search, zone }: { readonly search: Search; readonly zone: string }) {
  const decideOn = useDecide();
  const { proposal, outcome } = search;
  if (!proposal || proposal.state !== 'open') return null;
  const decide = decideOn(proposal);
  return (
    <>
      <p>
        <b>No. {proposal.number}</b>, {isoWords(proposal.createdAt, zone)}, by {proposal.cause}.{' '}
        {outcome?.proved && 'It is proved that no plan is better.'}
        {outcome &&
          !outcome.proved &&
          outcome.withinPercent !== null &&
          `Within ${percent(outcome.withinPercent)} of the bound.`}
        {outcome?.factsMoved && ' Facts have moved since the search began; it is planned anew on them.'}
      </p>
      <p className="decide">
        <button type="button" className="act act-strong" onClick={() => decide('acceptProposal', 'Accept')}>
          Accept the better plan
        </button>
        <button type="button" className="act" onClick={() => decide('dropProposal', 'Drop')}>
          Drop the better plan
        </button>
      </p>
      {outcome && <Costs outcome={outcome} />}
      <OfferTables proposal={proposal} zone={zone} />
    </>
  );
}

function Costs({ outcome }: { readonly outcome: NonNullable<Search['outcome']> }) {
  const { before, after } = outcome;
  const rows = [
    ['Hours late', before.latenessHours, after.latenessHours],
    ['Hours to the ends', before.finishHours, after.finishHours],
    ['Hours off promises', before.disturbanceHours, after.disturbanceHours],
    ['Moves of crews', before.crewMoves, after.crewMoves],
    ['Without a place', before.unplanned, after.unplanned],
  ] as const;
  return (
    <table>
      <caption>What it costs</caption>
      <TableHead names={['All jobs together', 'In force', 'Offered']} />
      <tbody>
        {rows.map(([name, was, is]) => (
          <tr key={name}>
            <th scope="row">{name}</th>
            <td>{Math.round(was)}</td>
            <td>{Math.round(is)}</td>
          </tr>
        ))}
      </tbody>
    </table>
  );
}

const percent = (value: number): string => `${value.toFixed(1)} %`;
