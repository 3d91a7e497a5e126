import { LoggerBlock } from '../cure/logger-block.js';
import { places } from '../cure/placement-form.js';
import { ProtectOrWaitBlock } from '../cure/protect-or-wait-block.js';
import {
  EntryDesignDocument,
  JobDesignDocument,
  JobPageDocument,
  JobRecordsDocument,
} from '../api/documents.js';
import { CorrectMeasurementForm } from '../design/correct-measurement-form.js';
import { EntryDesignBlock } from '../design/entry-design-block.js';
import { useQuery } from '../api/use-query.js';
import { HatchDefinitions } from '../draw/hatches.js';
import { JobPhotos } from '../photos/job-photos.js';
import { JobLinksBlock } from '../links/job-links-block.js';
import { PageLink } from '../routing/page-link.js';
import { OutcomeList } from '../sends/outcome-list.js';
import { useSignedIn } from '../session/session.js';
import { BuyTable } from './buy-table.js';
import { ClearanceTable } from './clearance-table.js';
import { DesignTable } from './design-table.js';
import { HeatingSetBlock } from './heating-set-block.js';
import { HoldPointTable } from './hold-point-table.js';
import { HookupList } from './hookup-list.js';
import { InspectionTable } from './inspection-table.js';
import { CommitBlock } from './commit-block.js';
import { JobHead } from './job-head.js';
import { JobJournal } from './job-journal.js';
import { PhaseTable } from './phase-table.js';
import { PlacementBlock } from './placement-block.js';
import { RecordLinks } from './record-links.js';
import { QuantityTable } from './quantity-table.js';
import { WaiveFindingForm } from './waive-finding-form.js';
import { WorkingOut } from './working-out.js';
import './job-page.css';

/** One job on one page: its areas, phases and gates in order, what was measured, and who did what. */
export function JobPage({ number }: { readonly number: number }) {
  const { me, company } = useSignedIn();
  const office = me.role === 'office';
  const { data, error } = useQuery(JobPageDocument, { number });
  const records = useQuery(JobRecordsDocument, { number }).data?.jobByNumber ?? null;
  const design = useQuery(JobDesignDocument, { number }).data?.jobByNumber ?? null;
  const designed = useQuery(EntryDesignDocument, { number });
  const entry = designed.data?.jobByNumber?.design ?? null;
  const job = data?.jobByNumber ?? null;
  const { zone } = company;
  return (
    <div className="job-page">
      <HatchDefinitions />
      <nav aria-label="Pages">
        <PageLink to="/">Board</PageLink> <PageLink to="/site">Site sheet</PageLink>
      </nav>
      <main>
        {error && <p className="fault">{error.message}</p>}
        {!data && !error && <p>Asking for job {number}.</p>}
        {data && !job && (
          <>
            <h1>There is no job {number}</h1>
            <p>Look on the board for the number of the job.</p>
          </>
        )}
        {job && (
          <>
            <JobHead job={job} zone={zone} />
            <CommitBlock job={job} zone={zone} />
            <OutcomeList />
            <PhaseTable phases={job.phases} zone={zone} />
            <HoldPointTable holdPoints={job.holdPoints} zone={zone} />
            <InspectionTable inspections={job.inspections} zone={zone} />
            <ClearanceTable clearances={job.clearances} zone={zone} />
            {records?.heatingSets.map((set) => (
              <HeatingSetBlock key={set.id} set={set} zone={zone} />
            ))}
            {records && <HookupList hookups={records.hookups} />}
            {me.role === 'office' && <JobLinksBlock number={number} zone={zone} />}
            {job.phases
              .filter((phase) => phase.state === 'waiting' && phase.durationKind === 'work' && places(phase))
              .map((phase) => (
                <ProtectOrWaitBlock key={phase.id} phase={phase} zone={zone} />
              ))}
            {records?.placements.map((placement) => (
              <PlacementBlock key={placement.id} placement={placement} zone={zone} />
            ))}
            <RecordLinks number={number} />
            <JobPhotos number={number} zone={zone} />
            <LoggerBlock site={job.site} zone={zone} />
            <QuantityTable quantities={job.quantities} />
            {!designed.data && !designed.error && <WorkingOut />}
            {entry && (
              <>
                <h2>
                  Design (<PageLink to={`/jobs/${number}/design`}>sheets to print</PageLink>)
                </h2>
                <EntryDesignBlock design={entry} />
              </>
            )}
            {design && <BuyTable lines={design.buyList} />}
            {design && (
              <DesignTable
                findings={design.findings}
                zone={zone}
                wayOut={(finding) => office && <WaiveFindingForm jobId={job.id} finding={finding} />}
              />
            )}
            {design && office && <CorrectMeasurementForm job={design} number={number} />}
            <JobJournal jobId={job.id} zone={zone} />
          </>
        )}
      </main>
    </div>
  );
}
