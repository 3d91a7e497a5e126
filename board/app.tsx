import { lazy, Suspense } from 'react';
import { LiveProvider } from './api/live.js';
import { BoardPage } from './board/board-page.js';
import { DesignPage } from './design/design-page.js';
import { HookupPage } from './hookup/hookup-page.js';
import { HookupSheetPage } from './hookup/hookup-sheet-page.js';
import { JobPage } from './job/job-page.js';
import { OwnerWeekPage } from './owner/owner-week-page.js';
import { useAddress } from './routing/location.js';
import { PageFault } from './routing/page-fault.js';
import { type Page, pageOf } from './routing/page-of.js';
import { PageLink } from './routing/page-link.js';
import { SendsProvider } from './sends/sends.js';
import { SessionProvider, useSession } from './session/session.js';
import { SignInPage } from './session/sign-in-page.js';
import { SitePage } from './site/site-page.js';

// Most days nobody enters a job: its forms are loaded when they are wanted.
const EnteringPage = lazy(async () => ({
  default: (await import('./entering/entering-page.js')).EnteringPage,
}));

/** The whole client: the page of a signed link, or who is signed in and the page that the address means. */
export function App() {
  const page = pageOf(useAddress().path);
  if (page.page === 'sheet' || page.page === 'week') {
    return (
      <PageFault>
        {page.page === 'sheet' ? <HookupSheetPage linkId={page.linkId} /> : <OwnerWeekPage />}
      </PageFault>
    );
  }
  return (
    <PageFault>
      <SessionProvider>
        <Gate />
      </SessionProvider>
    </PageFault>
  );
}

/** Lets signed-in people to their page and everybody else to the sign-in. */
function Gate() {
  const { state, me, refresh } = useSession();
  const { path } = useAddress();
  const page = pageOf(path);
  if (state === 'unknown') return <p className="page-note">One moment: asking who is signed in.</p>;
  if (state === 'unreachable') {
    return (
      <main className="page-note">
        <h1>Flagway cannot be reached</h1>
        <p>Check the connection. Changes that were not sent are kept on this device.</p>
        <button type="button" className="act act-strong" onClick={() => void refresh()}>
          Try again
        </button>
      </main>
    );
  }
  if (!me || page.page === 'sign-in') return <SignInPage />;
  return (
    <LiveProvider key={me.id}>
      <SendsProvider personId={me.id}>
        <Shown page={page} />
      </SendsProvider>
    </LiveProvider>
  );
}

function Shown({ page }: { readonly page: Page }) {
  switch (page.page) {
    case 'board':
      return <BoardPage />;
    case 'site':
      return <SitePage />;
    case 'entering':
      return (
        <Suspense fallback={<p className="page-note">Asking for the forms of a job.</p>}>
          <EnteringPage />
        </Suspense>
      );
    case 'job':
      return <JobPage key={page.number} number={page.number} />;
    case 'design':
      return <DesignPage key={page.number} number={page.number} />;
    case 'hookup':
      return <HookupPage key={page.id} id={page.id} />;
    default:
      return (
        <main className="page-note">
          <h1>There is no such page</h1>
          <p>
            Go to the <PageLink to="/">board</PageLink> or to the <PageLink to="/site">site sheet</PageLink>.
          </p>
        </main>
      );
  }
}
