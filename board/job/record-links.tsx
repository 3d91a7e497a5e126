/** The ways to the closing record: the file of the company, and the one for the owner of the house. */
export function RecordLinks({ number }: { readonly number: number }) {
  const path = (audience: 'owner' | 'company') => `/files/records/${number}/${audience}.pdf`;
  return (
    <section className="job-sheet" aria-label="Closing record">
      <h2>Closing record</h2>
      <p>
        Made from what is on record now, as PDF on Letter:{' '}
        <a href={path('owner')} download>
          for the owner of the house
        </a>{' '}
        (released photos, no journal) or{' '}
        <a href={path('company')} download>
          for the company
        </a>{' '}
        (all of it).
      </p>
    </section>
  );
}
