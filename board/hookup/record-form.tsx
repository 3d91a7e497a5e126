import type { FormEvent } from 'react';
import type { HookupOfSheet } from './hookup-of-sheet.js';
import { useSends } from '../sends/sends.js';

/** Records the hookup as it was made. */
export function RecordForm({ hookup }: { readonly hookup: HookupOfSheet }) {
  const { send } = useSends();
  const record = (event: FormEvent<HTMLFormElement>) => {
    event.preventDefault();
    const form = new FormData(event.currentTarget);
    void send('recordHookup', `Record the hookup of ${hookup.heatingSet.name}`, {
      hookupId: hookup.id,
      revision: hookup.revision,
      breakerAmperes: Number(form.get('breaker')),
      disconnect: form.get('disconnect') !== null,
      groundFault: form.get('groundFault') !== null,
      note: String(form.get('note') ?? '').trim() || null,
    });
  };
  return (
    <form className="cell hookup-form" onSubmit={record}>
      <h2>Record the hookup</h2>
      <label>
        Breaker, A
        <input
          name="breaker"
          inputMode="numeric"
          pattern="[0-9]+"
          required
          title="A whole number such as 20"
        />
      </label>
      <label className="confirm">
        <input type="checkbox" name="disconnect" />
        Disconnect in place
      </label>
      <label className="confirm">
        <input type="checkbox" name="groundFault" />
        Ground-fault protection of equipment in place
      </label>
      <label>
        Note
        <input name="note" />
      </label>
      <button type="submit" className="act act-strong act-large">
        Record
      </button>
    </form>
  );
}
