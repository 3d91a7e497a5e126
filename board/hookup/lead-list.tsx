import type { HookupOfSheet } from './hookup-of-sheet.js';

/** How the leads stand, one line each, and where they come through. */
export function LeadList({ hookup }: { readonly hookup: HookupOfSheet }) {
  const { coldLeadThrough, coldLeadFreeInches, sensorThrough, leadsLabelled, leadsPass, heatingSet } = hookup;
  const rows = [
    { name: 'Sensor lead', ready: sensorThrough, words: 'through the wall' },
    {
      name: 'Cold lead',
      ready: coldLeadThrough,
      words: coldLeadFreeInches === null ? 'through the wall' : `through, ${coldLeadFreeInches} in free`,
    },
    { name: 'Labels', ready: leadsLabelled, words: 'on both leads' },
  ];
  return (
    <section aria-label="Leads">
      <h2>Leads</h2>
      <dl className="leads">
        {rows.map(({ name, ready, words }) => (
          <div key={name} className={ready ? 'lead-ready' : 'lead-open'}>
            <dt>{name}</dt>
            <dd>{ready ? words : `not ${words.replace(/^through,.*/, 'through the wall')} yet`}</dd>
          </div>
        ))}
      </dl>
      <p>
        {leadsPass ?? 'No plan of the entry was drawn; ask the office where the leads come through.'} The cold
        lead is {heatingSet.coldLeadFeet} ft long.
      </p>
    </section>
  );
}
