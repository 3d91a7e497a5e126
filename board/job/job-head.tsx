import { dateWords } from '../time/moment-words.js';
import { JOB_WORDS } from '../words/state-words.js';
import type { JobOfPage } from './job-types.js';

/** The title block of a job. */
export function JobHead({ job, zone }: { readonly job: JobOfPage; readonly zone: string }) {
  const { site } = job;
  const day = (iso: string | null, missing: string) => (iso ? dateWords(Date.parse(iso), zone) : missing);
  return (
    <header className="job-head">
      <div className="job-title">
        <span className="row-number">{job.number}</span>
        <div>
          <h1>{job.name}</h1>
          <p>
            {site.address}, {site.town}
          </p>
        </div>
      </div>
      <dl>
        <Cell name="State">{JOB_WORDS[job.state]}</Cell>
        <Cell name="Owner">{job.ownerName}</Cell>
        <Cell name="Served">priority {job.priority} of 9</Cell>
        <Cell name="Promised end">{day(job.dueAt, 'none')}</Cell>
        <Cell name="Planned end">{day(job.plannedFinish, 'not planned')}</Cell>
        <Cell name="Committed end">{day(job.committedFinish, 'not committed')}</Cell>
        <Cell name="Areas">
          {job.areas.map(({ name, heated }) => (heated ? `${name}, heated` : name)).join('; ')}
        </Cell>
        <Cell name="Frost depth">
          {site.frostDepthInches} in ({site.frostSource})
        </Cell>
        <Cell name="Authority">
          {site.authority
            ? `${site.authority.name}, ${site.authority.noticeHours} h notice${site.authority.phone ? `, ${site.authority.phone}` : ''}`
            : 'none named'}
        </Cell>
      </dl>
    </header>
  );
}

function Cell({ name, children }: { readonly name: string; readonly children: React.ReactNode }) {
  return (
    <div className="job-cell">
      <dt className="caption">{name}</dt>
      <dd>{children}</dd>
    </div>
  );
}
