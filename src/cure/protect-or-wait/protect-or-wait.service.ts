import { Injectable } from '@nestjs/common';
import type { Prisma } from '../../generated/prisma/client.js';
import { readRows } from '../../planning/planning.face.js';
import { WrongState } from '../../phases/phases.face.js';
import type { Change } from '../../platform/change/change.js';
import { ChangeRunner } from '../../platform/change/change-runner.js';
import { Clock } from '../../platform/clock/clock.js';
import type { Context } from '../../platform/context.js';
import { Database } from '../../platform/database/database.js';
import { demandFound, demandRevision } from '../../platform/outcomes/demand.js';
import { parseInput } from '../../platform/outcomes/parse-input.js';
import { type Refusal, Refused } from '../../platform/outcomes/refusal.js';
import { siteAir } from '../outlook/site-air.js';
import { equipmentOf, PROTECTING, WAIT_REASON } from './branch-rows.js';
import { type Comparison, compare } from './compare.js';
import type { CarriedOut } from './carry-out.js';
import { type Pour, readPour } from './pour.js';
import { CodedError } from '../../platform/graphql/coded-error.js';
import {
  choiceSchema,
  type GivenPour,
  type ChooseProtectionInput,
  pourSchema,
  type ProtectOrWaitInput,
} from './protect-or-wait.inputs.js';
import type { ProtectOrWait } from './protect-or-wait.model.js';
import type { ProtectionChosen } from './protect-or-wait.outcomes.js';

/** Compares protecting a pour with waiting, and carries out what the office chooses. */
@Injectable()
export class ProtectOrWaitService {
  constructor(
    private readonly database: Database,
    private readonly changes: ChangeRunner,
    private readonly clock: Clock,
  ) {}

  /** Both ways side by side; null for a phase that is not there, or has placed already. Writes nothing. */
  async compare(ctx: Context, input: ProtectOrWaitInput): Promise<ProtectOrWait | null> {
    const given = checked(input);
    const pour = await readPour(this.database, ctx.companyId, input.phaseId, given);
    if (!pour || wrongState(pour)) return null;
    const at = { tx: this.database, ctx, now: this.clock.now() };
    return (await comparisonOf(at, pour)).answer;
  }

  /** Carries out a choice: the equipment it takes, the time its cure is given, the window it waits for. */
  choose(ctx: Context, input: ChooseProtectionInput): Promise<ProtectionChosen | Refusal> {
    return this.changes.run(ctx, { operation: 'chooseProtection', input }, async (change) => {
      const { pour: given, reason } = parseInput(choiceSchema, input);
      const pour = demandFound(await readPour(change.tx, ctx.companyId, input.pour.phaseId, given), 'phase');
      demandRevision(pour.phase, input.revision, 'phase');
      const wrong = wrongState(pour);
      if (wrong) throw new Refused(wrong);
      const comparison = await comparisonOf(change, pour);
      const chosen = comparison[input.branch];
      await holdEquipment(change, pour, chosen);
      await holdUntil(change, pour, chosen);
      await writeChoice(change, pour, comparison, chosen, reason || null);
      change.record({
        action: input.branch === 'protect' ? 'protection chosen' : 'waiting chosen',
        subjectType: 'phase',
        subjectId: pour.phase.id,
        jobId: pour.phase.jobId,
        detail: { phase: pour.phase.name, placedAt: chosen.placedAt?.toISOString() ?? null },
        reason: reason || null,
      });
      return { phaseId: pour.phase.id };
    });
  }
}

/** @throws CodedError with every fault: a question has no refusals to answer with. */
function checked(input: ProtectOrWaitInput): GivenPour {
  const parsed = pourSchema.safeParse(input);
  if (parsed.success) return parsed.data;
  const faults = parsed.error.issues.map(({ path, message }) => `${path.join('.')}: ${message}`);
  throw new CodedError('bad-request', faults.join('; '));
}

function wrongState({ phase }: Pour): WrongState | null {
  if (phase.state === 'waiting' && phase.placements.length === 0) return null;
  const message = `${phase.name} has started or placed already; change the protection of its placement instead.`;
  return new WrongState(phase.state, message);
}

async function comparisonOf(at: Pick<Change, 'tx' | 'now' | 'ctx'>, pour: Pour): Promise<Comparison> {
  const { siteId } = pour.phase.job;
  const rows = await readRows(at);
  const air = await siteAir(at.tx, at.ctx.companyId, [siteId], at.now);
  return compare(withoutOwnWait(rows, pour), pour, air(siteId), at.now);
}

/** An earlier choice to wait must not stand in the way of a new comparison. */
function withoutOwnWait(rows: Awaited<ReturnType<typeof readRows>>, { phase }: Pour) {
  const weatherHolds = rows.weatherHolds.filter(
    (hold) => hold.phaseId !== phase.id || hold.reason !== WAIT_REASON,
  );
  return { ...rows, weatherHolds };
}

/** The stock that the choice takes, from the pour until its cure ends; waiting gives it back. */
async function holdEquipment(change: Change, pour: Pour, { spec }: CarriedOut): Promise<void> {
  const { tx, ctx } = change;
  const { phase, cure } = pour;
  const rows = await readRows(change);
  await tx.equipmentHold.deleteMany({
    where: { companyId: ctx.companyId, fromPhaseId: phase.id, pool: { kind: { in: [...PROTECTING] } } },
  });
  await tx.equipmentHold.createMany({
    data: [...equipmentOf(rows, pour, spec)].map(([poolId, quantity]) => ({
      companyId: ctx.companyId,
      poolId,
      quantity,
      fromPhaseId: phase.id,
      untilPhaseId: cure?.id ?? phase.id,
    })),
  });
}

/** A hold until the window that waiting found; an earlier one of the same kind is lifted. */
async function holdUntil({ tx, ctx, now }: Change, { phase }: Pour, { spec }: CarriedOut): Promise<void> {
  const { companyId } = ctx;
  await tx.weatherHold.updateMany({
    where: { companyId, phaseId: phase.id, cause: 'called', reason: WAIT_REASON, liftedAt: null },
    data: {
      liftedAt: now,
      liftedById: ctx.personId || null,
      liftReason: 'The office chose anew.',
      revision: { increment: 1 },
    },
  });
  if (spec.notBefore === null) return;
  await tx.weatherHold.create({
    data: {
      companyId,
      siteId: phase.job.siteId,
      phaseId: phase.id,
      cause: 'called',
      startsAt: now,
      endsAt: spec.notBefore,
      reason: WAIT_REASON,
      calledById: ctx.personId || null,
    },
  });
}

async function writeChoice(
  { tx, ctx, now }: Change,
  { phase, protection }: Pour,
  { answer }: Comparison,
  { spec }: CarriedOut,
  reason: string | null,
): Promise<void> {
  const data = {
    branch: spec.branch,
    ...(spec.branch === 'protect' ? { plan: protection as unknown as Prisma.InputJsonObject } : {}),
    cureMinutes: spec.cureMinutes,
    comparison: JSON.parse(JSON.stringify(summaryOf(answer))) as Prisma.InputJsonObject,
    reason,
    chosenAt: now,
    chosenById: ctx.personId || null,
  };
  await tx.protectionChoice.deleteMany({ where: { phaseId: phase.id } });
  await tx.protectionChoice.create({ data: { companyId: ctx.companyId, phaseId: phase.id, ...data } });
}

/** What is kept of a comparison: its figures, not its curves. */
function summaryOf({ protect, wait }: ProtectOrWait) {
  const of = ({ outlook, protection, cautions: _cautions, ...figures }: ProtectOrWait['protect']) => ({
    ...figures,
    protection: protection.text,
    lowestF: outlook?.lowest.coldestF ?? null,
    hoursToFirstFreeze: outlook?.hoursToFirstFreeze ?? null,
    freezesAt: outlook?.freezes?.at ?? null,
  });
  return { protect: of(protect), wait: of(wait) };
}
