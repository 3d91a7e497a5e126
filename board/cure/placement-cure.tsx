import { PlacementCureDocument } from '../api/documents.js';
import { useQuery } from '../api/use-query.js';
import { useSends } from '../sends/sends.js';
import { useSignedIn } from '../session/session.js';
import { isoWords } from '../time/moment-words.js';
import { findingWords } from '../words/finding-words.js';
import { AlarmList } from './alarm-list.js';
import { ChangeProtectionForm } from './change-protection-form.js';
import { CureCurve } from './cure-curve.js';

/** The service's clock is asked for with a stretch of no length to speak of. */
const MOMENT = { from: '2000-01-01T00:00:00.000Z', to: '2000-01-01T00:15:00.000Z' };

interface PlacementCureProps {
  readonly placementId: string;
  readonly title: string;
  readonly zone: string;
}

/** One placement while it cures: what must be minded, its course, and its protection. */
export function PlacementCure({ placementId, title, zone }: PlacementCureProps) {
  const { me } = useSignedIn();
  const { data, error } = useQuery(PlacementCureDocument, { id: placementId, ...MOMENT });
  const placement = data?.placement;
  if (error) return <p className="fault">{error.message}</p>;
  if (!data || !placement) return <p>Asking for the course of the cure.</p>;
  const may = me.role === 'office' || me.role === 'foreman';
  const { protectionOff, protectionOffAt, protectionOffReason, protectionPlan, outlook } = placement;
  const cured = outlook.release?.basis === 'measured';
  return (
    <>
      <AlarmList alarms={placement.alarms} zone={zone} />
      <CureCurve title={title} outlook={outlook} zone={zone} now={Date.parse(data.board.now)} />
      <p>
        Protection: {protectionPlan.text}.{' '}
        {protectionOffAt &&
          `Off since ${isoWords(protectionOffAt, zone)}${protectionOffReason ? `, because: ${protectionOffReason}` : ''}.`}
        {protectionOff && findingWords(protectionOff)}
      </p>
      <ul>
        {placement.cautions
          .filter((caution) => caution !== outlook.caution)
          .map((caution) => (
            <li key={caution}>{caution}</li>
          ))}
      </ul>
      {may && protectionOff && <TakeOff placement={placement} title={title} ok={protectionOff.ok} />}
      {may && (protectionOff || !cured) && (
        <ChangeProtectionForm placement={placement} title={title} now={protectionPlan} />
      )}
    </>
  );
}

interface TakeOffProps {
  readonly placement: { readonly id: string; readonly revision: number };
  readonly title: string;
  readonly ok: boolean;
}

function TakeOff({ placement, title, ok }: TakeOffProps) {
  const { send } = useSends();
  return (
    <button
      type="button"
      className={ok ? 'act act-strong act-large' : 'act act-large'}
      onClick={() =>
        void send('takeProtectionOff', `Protection off: ${title}`, {
          placementId: placement.id,
          revision: placement.revision,
        })
      }
    >
      Record that the protection is off
    </button>
  );
}
