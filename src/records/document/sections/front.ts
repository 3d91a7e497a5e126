import type { Block } from '../block.js';
import type { RecordFacts } from '../../record-facts.js';
import { HOOKUP_STATES, JOB_STATES, joined, when } from '../words.js';

/** What the record is about, and what it is not. */
export function front({ company, job, audience, asOf }: RecordFacts): Block[] {
  const { site } = job;
  const starts = job.phases.flatMap(({ actualStart }) => actualStart ?? []).sort();
  const ends = job.phases.flatMap(({ actualFinish }) => actualFinish ?? []).sort();
  return [
    { kind: 'section', text: `Closing record of job ${job.number}` },
    {
      kind: 'pairs',
      rows: [
        ['Job', `${job.number} ${job.name}`],
        ['Site', joined([site.address, site.town])],
        ['Owner', job.ownerName],
        ['Built by', company.name],
        ['State', JOB_STATES[job.state]],
        ['Last change on record', when(asOf, company.zone) || 'none'],
        [
          'Work on site',
          starts[0]
            ? `${when(starts[0], company.zone)} to ${when(ends.at(-1) ?? null, company.zone) || 'not finished'}`
            : 'not begun',
        ],
        ['Areas', job.areas.map(({ name, heated }) => (heated ? `${name}, heated` : name)).join('; ')],
        ['Frost depth', `${site.frostDepthInches} in (${site.frostSource})`],
        ['Authority', site.authority?.name ?? 'none named'],
        ...job.hookups.map(({ heatingSet, state, energisedAt }): [string, string] => [
          heatingSet.name,
          joined([HOOKUP_STATES[state], energisedAt && `energised ${when(energisedAt, company.zone)}`]) ||
            HOOKUP_STATES[state],
        ]),
      ],
    },
    {
      kind: 'text',
      tone: 'caution',
      text: 'This record says what was measured, inspected and decided. It does not replace the local code, the inspector, the engineer or the licensed electrician; where they differ, they decide. Electrical work is for a licensed electrician under permit: de-energise, lock, verify. Ground-fault protection of equipment does not protect people from shock. Never cut the heating cable, and know where it lies before anything is drilled or cut.',
    },
    {
      kind: 'text',
      tone: 'small',
      text:
        audience === 'company'
          ? 'Record of the company, with its journal and all photos. The record for the owner of the house has neither the journal nor photos that were not released.'
          : 'Times are those of the site. Limits are told with where they come from.',
    },
  ];
}
