import type { FormEvent } from 'react';
import type { HookupPageQuery } from '../api/documents.js';
import { momentAt } from '../time/zone-days.js';
import { useSends } from '../sends/sends.js';

export type HookupOfPage = NonNullable<HookupPageQuery['hookup']>;

/** Names the day of the hookup; the service is told its first moment in the zone of the company. */
export function BookForm({ hookup, zone }: { readonly hookup: HookupOfPage; readonly zone: string }) {
  const { send } = useSends();
  const book = (event: FormEvent<HTMLFormElement>) => {
    event.preventDefault();
    const day = String(new FormData(event.currentTarget).get('day'));
    void send('bookHookup', `Book ${day} for the hookup of ${hookup.heatingSet.name}`, {
      hookupId: hookup.id,
      revision: hookup.revision,
      day: new Date(momentAt(day, 0, zone)).toISOString(),
    });
  };
  return (
    <form className="cell hookup-form" onSubmit={book}>
      <h2>{hookup.bookedFor ? 'Book another day' : 'Book a day'}</h2>
      <label>
        Day
        <input type="date" name="day" required />
      </label>
      <button type="submit" className="act act-strong act-large">
        Book
      </button>
    </form>
  );
}
