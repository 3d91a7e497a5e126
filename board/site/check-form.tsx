import { type FormEvent, useState } from 'react';
import { useSends } from '../sends/sends.js';
import { CheckItem } from './check-item.js';
import type { SiteHoldPoint } from './hold-point-sheet.js';
import { measuredValues } from './measured-values.js';

/** Measured values and confirmations of a check, and the two decisions on it. */
export function CheckForm({ holdPoint }: { readonly holdPoint: SiteHoldPoint }) {
  const { send } = useSends();
  const [fault, setFault] = useState('');
  const decide = (event: FormEvent<HTMLFormElement>) => {
    event.preventDefault();
    const submitter = (event.nativeEvent as SubmitEvent).submitter as HTMLButtonElement | null;
    const form = new FormData(event.currentTarget);
    const remark = String(form.get('remark') ?? '').trim() || null;
    const row = {
      holdPointId: holdPoint.id,
      revision: holdPoint.revision,
      seen: holdPoint.state,
      values: measuredValues(holdPoint.items, form),
      remark,
    };
    setFault('');
    if (submitter?.value === 'release') {
      void send('decideHoldPoint', `Release ${holdPoint.title}`, { ...row, decision: 'released' });
    } else if (remark) {
      void send('decideHoldPoint', `Refuse ${holdPoint.title}`, { ...row, decision: 'refused' });
    } else {
      setFault('Say under Remark why it is refused.');
    }
  };
  return (
    <form className="check-form" onSubmit={decide}>
      {holdPoint.items.map((item) => (
        <CheckItem key={item.id} item={item} />
      ))}
      <label>
        Remark
        <input name="remark" />
      </label>
      <p role="alert" className="fault">
        {fault}
      </p>
      <div className="two-acts">
        <button type="submit" value="release" className="act act-strong act-large">
          Release
        </button>
        <button type="submit" value="refuse" className="act act-large">
          Refuse
        </button>
      </div>
    </form>
  );
}
