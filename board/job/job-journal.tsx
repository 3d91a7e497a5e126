import { JobJournalDocument } from '../api/documents.js';
import { useQuery } from '../api/use-query.js';
import { isoWords } from '../time/moment-words.js';
import { Sheet } from './sheet.js';

/** What was done at the job, by whom, and why. */
export function JobJournal({ jobId, zone }: { readonly jobId: string; readonly zone: string }) {
  const { data, error } = useQuery(JobJournalDocument, { jobId });
  if (error) return <p className="fault">{error.message}</p>;
  return (
    <Sheet title="Journal" heads={['When', 'What', 'Who', 'Why']}>
      {data?.journal.edges.map(({ node }) => (
        <tr key={node.id}>
          <th scope="row">{isoWords(node.at, zone)}</th>
          <td>{node.action}</td>
          <td>{node.byLink ? `${node.byLink}, by a link` : (node.person?.name ?? 'the service')}</td>
          <td>{node.reason}</td>
        </tr>
      ))}
    </Sheet>
  );
}
