import { OwnerWeekDocument } from '../api/documents.js';
import { QuietProvider } from '../api/live.js';
import { useQuery } from '../api/use-query.js';
import { LinkPhotos } from '../links/link-photos.js';
import { SheetFault } from '../links/sheet-fault.js';
import { SheetFoot } from '../links/sheet-foot.js';
import { SheetHead } from '../links/sheet-head.js';
import { OwnerDayBlock } from './owner-day-block.js';
import '../links/link-page.css';
import './owner-week.css';

/** What the owner of the house reads: the next seven days in plain words, opened by a link. */
export function OwnerWeekPage() {
  return (
    <QuietProvider>
      <Shown />
    </QuietProvider>
  );
}

function Shown() {
  const { data, error, reload } = useQuery(OwnerWeekDocument, {});
  const week = data?.ownerWeek ?? null;
  const ended = error && error.fault !== 'unreachable';
  return (
    <div className="link-page owner">
      <main>
        {error && (!week || ended) && <SheetFault message={error.message} again={reload} />}
        {error && week && !ended && <p className="fault">{error.message}</p>}
        {!data && !error && <p>Asking for the week.</p>}
        {week && !ended && (
          <>
            <SheetHead
              head={week.head}
              over={week.head.companyName}
              title={`The next seven days at ${week.head.jobName}`}
            />
            <p className="owner-summary">{week.summary}</p>
            <section aria-label="Day by day">
              <h2>Day by day</h2>
              <ol className="owner-days">
                {week.days.map((day, index) => (
                  <OwnerDayBlock key={day.date} day={day} today={index === 0} />
                ))}
              </ol>
              <p>
                Days marked “expected” are not agreed yet, and any day can move with the weather: mortar and
                concrete must not freeze while they harden.
              </p>
            </section>
            <section aria-label="The way in" className="cell">
              <h2>The way in</h2>
              <p>{week.walk}</p>
            </section>
            <section aria-label="The heat" className="cell">
              <h2>The heat</h2>
              <p>{week.heat}</p>
              {week.heatCaution && <p className="owner-caution">{week.heatCaution}</p>}
            </section>
            <LinkPhotos photos={week.photos} zone={week.head.zone} />
            <SheetFoot head={week.head} />
          </>
        )}
      </main>
    </div>
  );
}
