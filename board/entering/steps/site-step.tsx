import type { FormEvent } from 'react';
import { CreateSiteDocument, type EnteringQuery } from '../../api/documents.js';
import { FormFaults } from '../form-faults.js';
import { checkTyped } from '../forms/check-typed.js';
import { type FormField, usualValues } from '../forms/field.js';
import { placeFaults } from '../forms/place-faults.js';
import { typedNumber } from '../forms/typed-number.js';
import { Step } from '../step.js';
import { TypedField } from '../typed-field.js';
import { useEnter } from '../use-enter.js';
import { useForm } from '../use-form.js';
import { WorkingNote } from '../../working/working-note.js';

const FIELDS: readonly FormField[] = [
  { name: 'address', label: 'Street address', text: true },
  { name: 'town', label: 'Town', text: true },
  {
    name: 'frost',
    label: 'Frost depth',
    unit: 'in',
    hint: 'From the building department: footings go below it.',
  },
  { name: 'frostSource', label: 'Who gave the frost depth', text: true, hint: 'The rule and its date, say.' },
  {
    name: 'latitude',
    label: 'Latitude',
    unit: '° north',
    optional: true,
    hint: 'For forecasts that are fetched.',
  },
  {
    name: 'longitude',
    label: 'Longitude',
    unit: '° east',
    optional: true,
    hint: 'West of Greenwich below 0.',
  },
];
const NEW = { ...usualValues(FIELDS), authority: '' };
const PATHS = {
  address: 'address',
  town: 'town',
  frostDepthInches: 'frost',
  frostSource: 'frostSource',
  latitude: 'latitude',
  longitude: 'longitude',
  authorityId: 'authority',
};
const LABELS = Object.fromEntries(FIELDS.map(({ name, label }) => [name, label]));

interface SiteStepProps {
  readonly sites: readonly EnteringQuery['sites']['edges'][number]['node'][];
  readonly authorities: EnteringQuery['authorities'];
  readonly zone: string;
  readonly onEntered: (siteId: string) => void;
}

/** Where it is built: address, frost depth with its source, who inspects. */
export function SiteStep({ sites, authorities, zone, onEntered }: SiteStepProps) {
  const { enter, since } = useEnter(CreateSiteDocument);
  const { values, faults, form, type, refuse, clear } = useForm(NEW);
  const authorityId = values['authority'] || authorities[0]?.id || null;
  const number = (name: string) => typedNumber(values[name] ?? '');
  const add = async (event: FormEvent) => {
    event.preventDefault();
    const at = checkTyped(FIELDS, values);
    if (Object.keys(at).length > 0) return refuse({ at, rest: [] });
    const answer = await enter({
      address: values['address'] ?? '',
      town: values['town'] ?? '',
      zone,
      frostDepthInches: number('frost') ?? 0,
      frostSource: values['frostSource'] ?? '',
      authorityId,
      latitude: number('latitude'),
      longitude: number('longitude'),
    });
    if (!answer.ok) return refuse(placeFaults(answer.faults, PATHS, LABELS));
    clear();
    if (answer.outcome.__typename === 'SiteChanged') onEntered(answer.outcome.site.id);
  };
  return (
    <Step
      step="site"
      number={4}
      title="Site"
      done={sites.length > 0}
      more="Enter another site"
      standing={
        sites.length > 0 && (
          <p>
            {sites
              .slice(-4)
              .map(
                ({ address, town, frostDepthInches }) => `${address}, ${town} (frost ${frostDepthInches} in)`,
              )
              .join('; ')}
            {sites.length > 4 && `; and ${sites.length - 4} before`}.
          </p>
        )
      }
    >
      <form
        ref={form}
        noValidate
        className="own-form"
        aria-label="A site"
        onSubmit={(event) => void add(event)}
      >
        <div className="field-row">
          {FIELDS.map((field) => (
            <TypedField
              key={field.name}
              field={field}
              value={values[field.name] ?? ''}
              fault={faults.at[field.name]}
              onType={type}
            />
          ))}
          <div className="typed">
            <label htmlFor="site-authority">Inspected by</label>
            <select
              id="site-authority"
              value={authorityId ?? ''}
              onChange={({ target }) => type('authority', target.value)}
            >
              {authorities.length === 0 && <option value="">no authority is entered yet</option>}
              {authorities.map(({ id, name }) => (
                <option key={id} value={id}>
                  {name}
                </option>
              ))}
            </select>
            {faults.at['authority'] && <span className="fault">{faults.at['authority']}</span>}
          </div>
        </div>
        <FormFaults faults={faults} />
        <button type="submit" className="act act-strong" disabled={since !== null}>
          Enter the site
        </button>
        <WorkingNote since={since}>Entering the site.</WorkingNote>
      </form>
    </Step>
  );
}
