import type { HookupOfSheet } from './hookup-of-sheet.js';
import { BookForm } from './book-form.js';
import { CircuitBlock } from './circuit-block.js';
import { LeadList } from './lead-list.js';
import { NeedList } from './need-list.js';
import { ReadingTrend } from './reading-trend.js';
import { RecordForm } from './record-form.js';
import { standing } from './standing.js';

interface HookupBodyProps {
  readonly hookup: HookupOfSheet;
  readonly zone: string;
  /** The moment by the clock of the service. */
  readonly now: number;
  /** Whether whoever reads it may book and record. */
  readonly may: boolean;
}

/** What an electrician reads of one heating set, and the two things to do: book a day, record the hookup. */
export function HookupBody({ hookup, zone, now, may }: HookupBodyProps) {
  const open = may && hookup.state !== 'done';
  return (
    <>
      <p className={`hookup-standing hookup-${hookup.state}`}>{standing(hookup, zone)}</p>
      <section aria-label="Cautions" className="cautions">
        <h2>Cautions</h2>
        <ul>
          {hookup.cautions.map((caution) => (
            <li key={caution}>{caution}</li>
          ))}
        </ul>
      </section>
      <NeedList title="Needed before the hookup" needs={hookup.needs} />
      <LeadList hookup={hookup} />
      <CircuitBlock circuit={hookup.circuit} />
      <ReadingTrend set={hookup.heatingSet} zone={zone} />
      {open && <BookForm hookup={hookup} zone={zone} now={now} />}
      {open && <RecordForm hookup={hookup} />}
      <NeedList title="Needed before energising" needs={hookup.energisingNeeds} />
    </>
  );
}
