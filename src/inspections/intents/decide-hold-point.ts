import type { Change } from '../../platform/change/change.js';
import { FieldConflict } from '../../platform/outcomes/field-conflict.js';
import { mergeField } from '../../platform/outcomes/merge-field.js';
import { Refused } from '../../platform/outcomes/refusal.js';
import type { MeasuredValueInput } from '../measured-value.input.js';
import { demandGateAhead, refusePoint, releasePoint } from '../release/decide.js';
import { demandHoldPoint, type GatedHoldPoint } from '../release/hold-point-with-gate.js';
import { itemsOf } from '../stored-items.js';
import type { DecideHoldPointInput } from './decide.inputs.js';
import { type DecisionTold, decisionText, decisionWords } from './decision-words.js';

/** What an intent decides, its remark already trimmed. */
type Asked = DecideHoldPointInput & { readonly remark: string | null };

/**
 * Decides a hold point unless somebody else has decided it otherwise meanwhile. Over a decision that was seen it is
 * decided anew, as long as its gate is not passed.
 *
 * @throws Refused with FieldConflict that shows both decisions.
 */
export async function decideHoldPoint(change: Change, input: Asked) {
  const point = await demandHoldPoint(change, { holdPointId: input.holdPointId });
  const standing = standingDecision(point);
  const asked: DecisionTold = { state: input.decision, values: input.values, remark: input.remark };
  const told = decisionText(standing);
  const merged = mergeField({
    standing: told,
    seen: sawStanding(change, point, input) ? told : input.seen,
    asked: decisionText(asked),
    revision: { now: point.revision, base: input.revision ?? null },
  });
  if (merged === 'same') return { holdPointId: point.id, answer: 'alreadyApplied' as const };
  if (merged === 'conflict') throw new Refused(await conflictOf(change, point, standing, asked));
  const measured = { values: input.values, remark: input.remark };
  if (point.state === 'released' || point.state === 'waived') demandGateAhead(point);
  const decide = input.decision === 'released' ? releasePoint : refusePoint;
  return { ...(await decide(change, point, measured)), answer: 'applied' as const };
}

/** An open point is as it was seen, and so is one's own decision; another's is known by the revision alone. */
function sawStanding(change: Change, point: GatedHoldPoint, { seen }: Asked): boolean {
  return seen === point.state && (seen === 'open' || point.decidedById === change.ctx.personId);
}

function standingDecision(point: GatedHoldPoint): DecisionTold {
  const values = (point.measured ?? []) as unknown as MeasuredValueInput[];
  return { state: point.state, values, remark: point.reason };
}

async function conflictOf(
  change: Change,
  point: GatedHoldPoint,
  standing: DecisionTold,
  asked: DecisionTold,
): Promise<FieldConflict> {
  const items = itemsOf(point);
  const person = point.decidedById
    ? await change.tx.person.findFirst({
        where: { companyId: change.ctx.companyId, id: point.decidedById },
      })
    : null;
  return new FieldConflict({
    field: `decision on ${point.title}`,
    theirs: decisionWords(standing, items),
    mine: decisionWords(asked, items),
    standing: point.state,
    changedBy: person?.name ?? null,
    changedAt: point.decidedAt,
    currentRevision: point.revision,
  });
}
