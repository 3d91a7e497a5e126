import type { SheetHeadFieldsFragment } from '../api/documents.js';
import { dayWords } from '../time/moment-words.js';

/** The foot of a page that a link opens: whom to ask, and how long the link lasts. */
export function SheetFoot({ head }: { readonly head: SheetHeadFieldsFragment }) {
  return (
    <footer className="sheet-foot">
      {head.askName && (
        <p>
          Questions: {head.askName}, {head.companyName}
          {head.askEmail && (
            <>
              , <a href={`mailto:${head.askEmail}`}>{head.askEmail}</a>
            </>
          )}
          .
        </p>
      )}
      <p>
        This page is for {head.recipient} alone. Its link lasts until{' '}
        {dayWords(Date.parse(head.expiresAt), head.zone)}.
      </p>
    </footer>
  );
}
