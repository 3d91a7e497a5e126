import { useState } from 'react';

interface MadeLinkProps {
  readonly recipient: string;
  readonly address: string;
}

/** The address of a link just made, to be copied or written into a mail; it is not shown again. */
export function MadeLink({ recipient, address }: MadeLinkProps) {
  const [copied, setCopied] = useState<string | null>(null);
  const copy = async () => {
    try {
      await navigator.clipboard.writeText(address);
      setCopied('Copied.');
    } catch {
      setCopied('This browser does not copy by itself: select the address and copy it.');
    }
  };
  const body = `${recipient},\n\nthis link opens your page, without a password:\n\n${address}\n\nIt is meant for you alone; please do not pass it on.\n`;
  return (
    <div className="made-link">
      <p>
        <b>The link of {recipient}.</b> It is shown this one time; send it now.
      </p>
      <label>
        Address of the link
        <input readOnly value={address} onFocus={({ target }) => target.select()} />
      </label>
      <p className="made-acts">
        <button type="button" className="act" onClick={() => void copy()}>
          Copy the address
        </button>
        <a
          className="act"
          href={`mailto:?subject=${encodeURIComponent('Your page')}&body=${encodeURIComponent(body)}`}
        >
          Write a mail with it
        </a>
        <span role="status">{copied}</span>
      </p>
    </div>
  );
}
