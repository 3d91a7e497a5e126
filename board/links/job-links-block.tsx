import { JobLinksDocument } from '../api/documents.js';
import { useQuery } from '../api/use-query.js';
import { Sheet } from '../job/sheet.js';
import { useSends } from '../sends/sends.js';
import { isoWords } from '../time/moment-words.js';
import { LinkForm } from './link-form.js';
import { openedWords, PURPOSE_WORDS, stateWords } from './link-words.js';

/** The links of a job: who has one, whether it was opened, and the ways to make one and to take one back. */
export function JobLinksBlock({ number, zone }: { readonly number: number; readonly zone: string }) {
  const { data, error, reload } = useQuery(JobLinksDocument, { number });
  const { send } = useSends();
  const job = data?.jobByNumber ?? null;
  if (error) return <p className="fault">{error.message}</p>;
  if (!job) return null;
  return (
    <div className="job-links">
      <Sheet
        title="Links for people without an account"
        heads={['For', 'What it opens', 'State', 'Last opened', 'Made by', '']}
      >
        {job.signedLinks.map((link) => (
          <tr key={link.id}>
            <th scope="row">{link.recipient}</th>
            <td>{PURPOSE_WORDS[link.purpose]}</td>
            <td>{stateWords(link, zone)}</td>
            <td>{openedWords(link, zone)}</td>
            <td>
              {link.madeBy}, {isoWords(link.createdAt, zone)}
            </td>
            <td>
              {link.state === 'live' && (
                <button
                  type="button"
                  className="act"
                  aria-label={`Take back the link of ${link.recipient}, ${PURPOSE_WORDS[link.purpose]}`}
                  onClick={() =>
                    void send('revokeSignedLink', `Take back the link of ${link.recipient}`, {
                      signedLinkId: link.id,
                    })
                  }
                >
                  Take back
                </button>
              )}
            </td>
          </tr>
        ))}
        {job.signedLinks.length === 0 && (
          <tr>
            <td colSpan={6}>Nobody has one yet.</td>
          </tr>
        )}
      </Sheet>
      <LinkForm jobId={job.id} ownerName={job.ownerName} made={reload} />
    </div>
  );
}
