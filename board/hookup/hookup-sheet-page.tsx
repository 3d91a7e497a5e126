import { HookupSheetDocument } from '../api/documents.js';
import { QuietProvider } from '../api/live.js';
import { useQuery } from '../api/use-query.js';
import { LinkPhotos } from '../links/link-photos.js';
import { SheetFault } from '../links/sheet-fault.js';
import { SheetFoot } from '../links/sheet-foot.js';
import { SheetHead } from '../links/sheet-head.js';
import { OutcomeList } from '../sends/outcome-list.js';
import { SendsProvider } from '../sends/sends.js';
import { HookupBody } from './hookup-body.js';
import '../links/link-page.css';
import './hookup-page.css';

/** The electrician's sheet of a job, opened by a link and without an account. */
export function HookupSheetPage({ linkId }: { readonly linkId: string }) {
  return (
    <QuietProvider>
      <SendsProvider personId={linkId}>
        <Shown />
      </SendsProvider>
    </QuietProvider>
  );
}

function Shown() {
  const { data, error, reload } = useQuery(HookupSheetDocument, {});
  const sheet = data?.hookupSheet ?? null;
  const ended = error && error.fault !== 'unreachable';
  return (
    <div className="link-page hookup">
      <main>
        {error && (!sheet || ended) && <SheetFault message={error.message} again={reload} />}
        {error && sheet && !ended && <p className="fault">{error.message}</p>}
        {!data && !error && <p>Asking for the hookup sheet.</p>}
        {sheet && !ended && (
          <>
            <SheetHead
              head={sheet.head}
              over={`Hookup sheet, ${sheet.head.companyName}`}
              title={`Job ${sheet.head.jobNumber}, ${sheet.head.jobName}`}
            />
            <OutcomeList />
            {sheet.head.jobState === 'cancelled' && (
              <p className="fault">This job is cancelled. Connect nothing.</p>
            )}
            {sheet.hookups.length === 0 && (
              <p>This job has no heating set, so there is nothing to connect.</p>
            )}
            {sheet.hookups.map((hookup) => (
              <section key={hookup.id} className="sheet-set" aria-label={hookup.heatingSet.name}>
                <h2>{hookup.heatingSet.name}</h2>
                <HookupBody
                  hookup={hookup}
                  zone={sheet.head.zone}
                  now={Date.parse(sheet.head.now)}
                  may={sheet.head.jobState !== 'cancelled'}
                />
              </section>
            ))}
            <LinkPhotos photos={sheet.photos} zone={sheet.head.zone} />
            <SheetFoot head={sheet.head} />
          </>
        )}
      </main>
    </div>
  );
}
