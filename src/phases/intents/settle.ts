import type { Phase } from '../../generated/prisma/client.js';
import type { Change } from '../../platform/change/change.js';
import { lastChange } from '../../platform/change/last-change.js';
import { companyRow } from '../../platform/database/company-row.js';
import { demandFound } from '../../platform/outcomes/demand.js';
import { FieldConflict } from '../../platform/outcomes/field-conflict.js';
import { mergeField } from '../../platform/outcomes/merge-field.js';
import { Refused } from '../../platform/outcomes/refusal.js';
import type { PhaseSettled } from './intents.outcomes.js';

/** One field of a phase, as an intent is about it. */
export interface PhaseField {
  /** The field in the words of a conflict: "start". */
  readonly field: string;
  readonly standing: string | null;
  readonly seen: string | null;
  readonly asked: string | null;
  /** A value in words. */
  readonly words: (value: string | null) => string;
  /** What the journal calls a change of this field, to name who made it. */
  readonly actions: readonly string[];
}

/** The phase that an intent names. @throws Refused with NotFound when it is missing. */
export async function demandIntentPhase(change: Change, phaseId: string) {
  const found = await change.tx.phase.findFirst({
    where: companyRow(change, phaseId),
    include: { job: { include: { site: { select: { zone: true } } } } },
  });
  return demandFound(found, 'phase');
}

/**
 * Settles an intent about one field: does `apply` where that loses nobody's value.
 *
 * @throws Refused with FieldConflict where somebody else set another value.
 */
export async function settle(
  change: Change,
  phase: Phase,
  base: number | null | undefined,
  one: PhaseField,
  apply: () => Promise<unknown>,
): Promise<PhaseSettled & { readonly phaseId: string }> {
  const { field, standing, seen, asked, words, actions } = one;
  const revision = { now: phase.revision, base: base ?? null };
  const merged = mergeField({ standing, seen, asked, revision });
  if (merged === 'conflict')
    throw new Refused(
      new FieldConflict({
        field: `${field} of ${phase.name}`,
        theirs: words(standing),
        mine: words(asked),
        standing,
        ...(await lastChange(change, phase.id, actions)),
        currentRevision: phase.revision,
      }),
    );
  if (merged === 'apply') await apply();
  return { phaseId: phase.id, answer: merged === 'apply' ? 'applied' : 'alreadyApplied' };
}
