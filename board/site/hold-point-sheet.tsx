import { GATE_KIND_WORDS, GateSymbol } from '../draw/gate-symbol.js';
import { PhotoForm } from '../photos/photo-form.js';
import { CheckForm } from './check-form.js';
import { CureForm } from './cure-form.js';
import type { SitePhase } from './day-sections.js';
import { ReadingForm } from './reading-form.js';

export type SiteHoldPoint = SitePhase['holdPoints'][number];

interface HoldPointSheetProps {
  readonly holdPoint: SiteHoldPoint;
  readonly phase: SitePhase;
}

/** An open hold point that can be opened up and answered here; others say where they are answered. */
export function HoldPointSheet({ holdPoint, phase }: HoldPointSheetProps) {
  const { kind, title, state, gate, caution } = holdPoint;
  return (
    <details className="hold-point">
      <summary>
        <GateSymbol kind={kind} state={state} />
        <span>
          {title}{' '}
          <small>
            ({GATE_KIND_WORDS[kind]}, before {gate}
            {state === 'refused' && ', refused'})
          </small>
        </span>
      </summary>
      {caution && <p className="caution">Caution: {caution}</p>}
      <Answer holdPoint={holdPoint} phase={phase} />
      <PhotoForm phaseId={phase.id} holdPointId={holdPoint.id} title={`${phase.job.number} ${title}`} />
    </details>
  );
}

function Answer({ holdPoint, phase }: HoldPointSheetProps) {
  switch (holdPoint.kind) {
    case 'check':
      return <CheckForm holdPoint={holdPoint} />;
    case 'reading':
      return <ReadingForm holdPoint={holdPoint} areaId={phase.area?.id ?? null} />;
    case 'inspection':
      return (
        <p>Released when the authority has passed its inspection. The office requests and books the visit.</p>
      );
    case 'clearance':
      return <p>Released when the clearance is on record. The office asks for it.</p>;
    case 'cure':
      return <CureForm holdPoint={holdPoint} placements={phase.job.placements} />;
  }
}
