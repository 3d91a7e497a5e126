import { type FormEvent, useRef, useState } from 'react';
import type { LinkPurpose } from '../api/documents.js';
import { MakeSignedLinkDocument } from '../api/documents.js';
import { ask, AskError } from '../api/ask.js';
import { MadeLink } from './made-link.js';
import './link-form.css';

interface LinkFormProps {
  readonly jobId: string;
  readonly ownerName: string;
  /** Called after a link was made. */
  readonly made: () => void;
}

/** What came of asking for a link. */
type Came =
  | { readonly state: 'nothing' | 'asking' }
  | { readonly state: 'made'; readonly recipient: string; readonly address: string }
  | { readonly state: 'refused'; readonly message: string };

/**
 * Makes a link. It is asked for on the spot and not by the outbox, for its address is shown this one time and belongs
 * into no record.
 */
export function LinkForm({ jobId, ownerName, made }: LinkFormProps) {
  const [came, setCame] = useState<Came>({ state: 'nothing' });
  const [purpose, setPurpose] = useState<LinkPurpose>('ownerWeek');
  const key = useRef(crypto.randomUUID());

  const submit = async (event: FormEvent<HTMLFormElement>) => {
    event.preventDefault();
    const recipient = String(new FormData(event.currentTarget).get('recipient') ?? '');
    setCame({ state: 'asking' });
    setCame(await makeLink({ clientKey: key.current, jobId, purpose, recipient }));
    key.current = crypto.randomUUID();
    made();
  };

  return (
    <form className="cell link-form" onSubmit={(event) => void submit(event)}>
      <h3>Make a link</h3>
      <label>
        It opens
        <select value={purpose} onChange={({ target }) => setPurpose(target.value as LinkPurpose)}>
          <option value="ownerWeek">the owner&apos;s week</option>
          <option value="hookup">the hookup sheet</option>
        </select>
      </label>
      <label>
        For whom
        <input
          key={purpose}
          name="recipient"
          required
          maxLength={80}
          autoComplete="off"
          defaultValue={purpose === 'ownerWeek' ? ownerName : ''}
        />
      </label>
      <button type="submit" className="act act-strong" disabled={came.state === 'asking'}>
        Make the link
      </button>
      <div aria-live="polite">
        {came.state === 'refused' && <p className="fault">{came.message}</p>}
        {came.state === 'made' && <MadeLink recipient={came.recipient} address={came.address} />}
      </div>
    </form>
  );
}

async function makeLink(input: {
  clientKey: string;
  jobId: string;
  purpose: LinkPurpose;
  recipient: string;
}): Promise<Came> {
  try {
    const { outcome } = await ask(MakeSignedLinkDocument, { input });
    if (outcome.__typename !== 'SignedLinkMade') return { state: 'refused', message: outcome.message };
    return outcome.address
      ? { state: 'made', recipient: input.recipient, address: outcome.address }
      : {
          state: 'refused',
          message: 'It was made already, and its address is shown once only. Take it back and make another.',
        };
  } catch (error) {
    if (!(error instanceof AskError)) throw error;
    return { state: 'refused', message: error.message };
  }
}
