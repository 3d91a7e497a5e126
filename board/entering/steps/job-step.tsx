import type { FormEvent } from 'react';
import { CreateJobDocument, type EnteringQuery } from '../../api/documents.js';
import { goTo } from '../../routing/location.js';
import { momentOfWall } from '../../time/wall-time.js';
import { FormFaults } from '../form-faults.js';
import { checkJob, jobLabels } from '../forms/check-job.js';
import { ticked, type Values } from '../forms/field.js';
import { AREAS, builds, JOB_FIELDS, MEASURES, NEW_JOB } from '../forms/job-fields.js';
import { measuredSheet, sheetPaths } from '../forms/measured-sheet.js';
import { placeFaults } from '../forms/place-faults.js';
import { SketchFigure } from '../sketch/sketch-figure.js';
import { Step } from '../step.js';
import { DateFields } from './date-fields.js';
import { DoorBoxes } from './door-boxes.js';
import { TickedBox } from '../ticked-box.js';
import { TypedField } from '../typed-field.js';
import { useEnter } from '../use-enter.js';
import { useForm } from '../use-form.js';
import { WorkingNote } from '../../working/working-note.js';

type Site = EnteringQuery['sites']['edges'][number]['node'];

/** Hour by which a promised end is kept on its day. */
const END_OF_DAY = 'T17:00';

const TITLE = 'The entry as measured, and its dates';

/** Stands for the job while something that it needs is missing. */
export function JobStepToCome() {
  return (
    <Step step="job" number={5} title={TITLE} done={false} more="" standing={null}>
      <p>
        The measures of the site visit go in here once the notes above are entered: landing, steps, walk,
        footing, the heating set, and the dates.
      </p>
    </Step>
  );
}

interface JobStepProps {
  readonly sites: readonly Site[];
  /** The site that was entered last on this page; else the newest. */
  readonly newSite: string | null;
  readonly zone: string;
  readonly personId: string;
}

/** The entry as measured, its owner and its dates. What is typed is kept in this tab until the job is entered. */
export function JobStep({ sites, newSite, zone, personId }: JobStepProps) {
  const { enter, since } = useEnter(CreateJobDocument);
  const {
    values: typed,
    faults,
    form,
    type,
    refuse,
    clear,
  } = useForm(NEW_JOB, `flagway.new-job.${personId}`);
  const site = sites.find(({ id }) => id === (typed['site'] || newSite)) ?? sites.at(-1) ?? null;
  // The footing goes to the frost depth unless another depth is typed.
  const values: Values = {
    ...typed,
    footingBottom: typed['footingBottom'] ?? String(site?.frostDepthInches ?? ''),
  };

  const add = async (event: FormEvent) => {
    event.preventDefault();
    const found = checkJob(values, site);
    if (Object.keys(found.at).length > 0 || found.rest.length > 0 || !site) return refuse(found);
    const answer = await enter({
      siteId: site.id,
      name: values['jobName'] ?? '',
      ownerName: values['owner'] ?? '',
      priority: Number(values['priority']),
      dueAt: dueAt(values['due'] ?? '', zone),
      coldWeather: ticked(values, 'cold'),
      measurement: JSON.stringify(measuredSheet(values, site)),
    });
    if (!answer.ok) return refuse(placeFaults(answer.faults, sheetPaths(values), jobLabels(values)));
    clear();
    if (answer.outcome.__typename === 'JobChanged') goTo(`/jobs/${answer.outcome.job.number}`);
  };

  return (
    <Step step="job" number={5} title={TITLE} done={false} more="" standing={null}>
      <form
        ref={form}
        noValidate
        className="job-form"
        aria-label="The job"
        onSubmit={(event) => void add(event)}
      >
        <div className="field-row">
          <div className={faults.at['site'] ? 'typed typed-fault' : 'typed'}>
            <label htmlFor="job-site">Site</label>
            <select
              id="job-site"
              value={site?.id ?? ''}
              aria-invalid={faults.at['site'] ? true : undefined}
              onChange={({ target }) => type('site', target.value)}
            >
              {sites.length === 0 && <option value="">no site is entered yet</option>}
              {sites.map(({ id, address, town }) => (
                <option key={id} value={id}>
                  {address}, {town}
                </option>
              ))}
            </select>
            {faults.at['site'] && <span className="fault">{faults.at['site']}</span>}
          </div>
          {JOB_FIELDS.map((field) => (
            <TypedField
              key={field.name}
              field={field}
              value={values[field.name] ?? ''}
              fault={faults.at[field.name]}
              onType={type}
            />
          ))}
        </div>
        <fieldset className="week">
          <legend>What is rebuilt</legend>
          {AREAS.map(({ key, name, has, heated }) => (
            <div key={key} className="area-boxes">
              <TickedBox name={has} label={name} on={ticked(values, has)} onType={type} />
              {ticked(values, has) && (
                <TickedBox name={heated} label={`${name} heated`} on={ticked(values, heated)} onType={type} />
              )}
            </div>
          ))}
          {faults.at['hasLanding'] && <p className="fault">{faults.at['hasLanding']}</p>}
        </fieldset>
        <div className="measures">
          <div className="measure-groups">
            {MEASURES.filter(({ asked }) => asked(values)).map(({ key, title, note, fields }) => (
              <fieldset key={key} className="measure-group">
                <legend>{title}</legend>
                <p className="limit">{note}</p>
                <div className="field-row">
                  {fields.map((field) => (
                    <TypedField
                      key={field.name}
                      field={
                        field.name === 'footingBottom' && site
                          ? {
                              ...field,
                              usual: String(site.frostDepthInches),
                              hint: 'The frost depth of the site, or deeper.',
                            }
                          : field
                      }
                      value={values[field.name] ?? ''}
                      fault={faults.at[field.name]}
                      onType={type}
                    />
                  ))}
                </div>
                {key === 'door' && <DoorBoxes values={values} onType={type} />}
              </fieldset>
            ))}
          </div>
          <SketchFigure values={values} frost={site?.frostDepthInches ?? null} />
        </div>
        {builds(values) && ticked(values, 'hasLanding') && (
          <TickedBox
            name="drawn"
            label="Lay the cable on a plan: landing a rectangle, steps in the middle of its front, the walk straight out from them"
            on={ticked(values, 'drawn')}
            onType={type}
          />
        )}
        {faults.at['drawn'] && (
          <p className="fault">{faults.at['drawn']} If the entry lies otherwise, untick the plan.</p>
        )}
        <DateFields values={values} fault={faults.at['due']} onType={type} />
        <p className="limit">
          Local code, the inspector and the licensed electrician decide; what is worked out here helps them
          and does not replace them.
        </p>
        <FormFaults faults={faults} />
        <button type="submit" className="act act-strong act-enter" disabled={since !== null}>
          Enter the job and plan it
        </button>
        <WorkingNote since={since}>
          Laying the cable, working out the design and planning all jobs.
        </WorkingNote>
      </form>
    </Step>
  );
}

/** The moment of a promised end; null where none is given. */
function dueAt(date: string, zone: string): string | null {
  const moment = date === '' ? null : momentOfWall(date + END_OF_DAY, zone);
  return moment === null ? null : new Date(moment).toISOString();
}
