import type { FormEvent } from 'react';
import type { HookupOfSheet } from './hookup-of-sheet.js';
import { dateAt, momentAt } from '../time/zone-days.js';
import { useSends } from '../sends/sends.js';

interface BookFormProps {
  readonly hookup: HookupOfSheet;
  readonly zone: string;
  /** The moment by the clock of the service. */
  readonly now: number;
}

/** Names the day of the hookup, today or a later one; the service is told its first moment in the zone of the site. */
export function BookForm({ hookup, zone, now }: BookFormProps) {
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
        <input type="date" name="day" required min={dateAt(now, zone)} />
      </label>
      <button type="submit" className="act act-strong act-large">
        Book
      </button>
    </form>
  );
}
