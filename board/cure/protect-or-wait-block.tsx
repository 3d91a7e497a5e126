import { useState } from 'react';
import { type BranchFieldsFragment, ProtectOrWaitDocument } from '../api/documents.js';
import { useQuery } from '../api/use-query.js';
import { Sheet } from '../job/sheet.js';
import { useSends } from '../sends/sends.js';
import { useSignedIn } from '../session/session.js';
import { isoWords } from '../time/moment-words.js';
import { findingWords } from '../words/finding-words.js';
import { CureCurve } from './cure-curve.js';
import { laterWords } from './later-words.js';

interface ProtectOrWaitBlockProps {
  readonly phase: { readonly id: string; readonly name: string };
  readonly zone: string;
}

/** A pour to come: opened up, both ways with it side by side, as pictures and as a table. The office chooses. */
export function ProtectOrWaitBlock({ phase, zone }: ProtectOrWaitBlockProps) {
  const [open, setOpen] = useState(false);
  return (
    <details className="job-sheet" onToggle={(event) => setOpen(event.currentTarget.open)}>
      <summary>
        <b>Protect or wait: {phase.name}</b>
      </summary>
      {open && <Comparison phase={phase} zone={zone} />}
    </details>
  );
}

function Comparison({ phase, zone }: ProtectOrWaitBlockProps) {
  const { me } = useSignedIn();
  const { send } = useSends();
  const { data, error } = useQuery(ProtectOrWaitDocument, { input: { phaseId: phase.id } });
  if (error) return <p className="fault">{error.message}</p>;
  if (!data) return <p>Carrying both ways through the plan.</p>;
  const answer = data.protectOrWait;
  if (!answer) return <p>It has placed already; see the cure of its placement.</p>;
  const { protect, wait, bare, jobs } = answer;
  const chosen = answer.phase.protectionChoice;
  const choose = (branch: 'protect' | 'wait') =>
    void send('chooseProtection', `${branch === 'protect' ? 'Protect' : 'Wait with'} ${phase.name}`, {
      pour: { phaseId: phase.id },
      branch,
    });
  return (
    <>
      <p>
        {answer.cold ? 'It meets cold weather.' : 'No cold weather in sight.'} {answer.coldRule}.{' '}
        {bare?.freezes
          ? `Placed when it would be protected, but bare, it freezes before 500 psi ${isoWords(bare.freezes.at, zone)}.`
          : 'Bare, it is not seen to freeze before 500 psi.'}{' '}
        {chosen &&
          `Chosen: ${chosen.branch}, ${isoWords(chosen.chosenAt, zone)}${chosen.by ? ` by ${chosen.by.name}` : ''}.`}
      </p>
      <div className="cure-branches">
        <BranchPicture title={`Protect ${phase.name}`} branch={protect} zone={zone} />
        <BranchPicture title={`Wait with ${phase.name}`} branch={wait} zone={zone} />
      </div>
      <Sheet title={`Both ways: ${phase.name}`} heads={['', 'Protect', 'Wait']}>
        {ROWS.map(([label, of]) => (
          <tr key={label}>
            <th scope="row">{label}</th>
            <td>{of(protect, zone)}</td>
            <td>{of(wait, zone)}</td>
          </tr>
        ))}
        {jobs
          .filter(({ waitLaterMinutes }) => waitLaterMinutes !== 0)
          .map(({ job, protectFinish, waitFinish, waitLaterMinutes }) => (
            <tr key={job.id}>
              <th scope="row">
                Job {job.number}, {job.name}
              </th>
              <td>{isoWords(protectFinish, zone)}</td>
              <td>
                {isoWords(waitFinish, zone)} {laterWords(waitLaterMinutes)}
              </td>
            </tr>
          ))}
      </Sheet>
      {me.role === 'office' && (
        <div className="two-acts">
          <button type="button" className="act act-large" onClick={() => choose('protect')}>
            Protect {phase.name}
          </button>
          <button type="button" className="act act-large" onClick={() => choose('wait')}>
            Wait with {phase.name}
          </button>
        </div>
      )}
    </>
  );
}

interface BranchPictureProps {
  readonly title: string;
  readonly branch: BranchFieldsFragment;
  readonly zone: string;
}

function BranchPicture({ title, branch, zone }: BranchPictureProps) {
  return (
    <section aria-label={title}>
      <h3>{title}</h3>
      <p>{branch.protection.text}.</p>
      {branch.outlook ? (
        <CureCurve title={title} outlook={branch.outlook} zone={zone} now={0} />
      ) : (
        <p>The plan finds no place for it: see its conflicts.</p>
      )}
      <ul>
        {branch.cautions.map((caution) => (
          <li key={caution}>{caution}</li>
        ))}
      </ul>
    </section>
  );
}

type Row = readonly [label: string, of: (branch: BranchFieldsFragment, zone: string) => string];

const ROWS: readonly Row[] = [
  [
    'Placed',
    ({ placedAt, weatherUnknown }, zone) =>
      `${isoWords(placedAt, zone)}${weatherUnknown ? ', weather unknown' : ''}`,
  ],
  ['Cure ends by the plan', ({ curedAt }, zone) => isoWords(curedAt, zone)],
  ['Job finished', ({ jobFinish }, zone) => isoWords(jobFinish, zone)],
  ['Last of all jobs finished', ({ allFinish }, zone) => isoWords(allFinish, zone)],
  ['Equipment-days', ({ equipmentDays }) => String(equipmentDays)],
  ['Hours of heating', ({ heatingHours }) => String(heatingHours)],
  ['Lowest in the concrete', ({ outlook }) => (outlook ? `${outlook.lowest.coldestF} °F` : 'not known')],
  ['Hours to 500 psi', ({ outlook }) => outlook?.hoursToFirstFreeze?.toFixed(1) ?? 'out of sight'],
  ['Freezes before 500 psi', ({ outlook }) => (outlook?.freezes ? 'yes' : 'not seen to')],
  ['As placed', ({ placing }) => (placing ? findingWords(placing) : 'not known')],
  ['Conflicts of the whole plan', ({ conflicts }) => String(conflicts)],
];
