import { DEFAULT_MIXTURES, type Mixture } from '../../../shared/cure/mixture.js';
import type { HoldPointItem } from '../../../shared/entry/hold-points/item.js';
import type { Phase, Prisma } from '../../generated/prisma/client.js';
import type { Transaction } from '../../platform/database/database.js';
import { isRowId } from '../../platform/row-id.js';
import type { GivenPour } from './protect-or-wait.inputs.js';
import type { ProtectionSpec } from '../protection/protection-spec.js';
import { BLANKET_R, TENT_F, TENT_HOURS } from '../protection/protection-spec.js';

const POUR = {
  job: { include: { site: true } },
  holds: { include: { pool: true } },
  placements: { select: { id: true } },
} satisfies Prisma.PhaseInclude;

/** A phase that is to place concrete, grout or mortar. */
export type PourPhase = Prisma.PhaseGetPayload<{ include: typeof POUR }>;

/** What is to be placed, as the two branches reckon with it. */
export interface Pour {
  readonly phase: PourPhase;
  /** The wait that its cure gates; null when there is none. */
  readonly cure: Phase | null;
  readonly requiredPsi: number;
  readonly material: 'concrete' | 'grout' | 'mortar';
  readonly mixture: Mixture;
  readonly sectionInches: number;
  readonly placedF: number;
  /** The protection of the branch that protects. */
  readonly protection: ProtectionSpec;
}

/** Section where nobody says, by what is placed, in. Common practice, no source. */
const SECTION = { concrete: 10, grout: 8, mortar: 1.5 } as const;

/** Temperature as placed where nobody says, °F: at least 55 is asked for. */
const PLACED_F = 60;

/** The trade's way with a small pour in the cold: a heated tent for half a day, then a layer of blanket. */
const SMALL_POUR: ProtectionSpec = {
  blanketLayers: 1,
  blanketR: BLANKET_R.value,
  enclosureF: TENT_F.value,
  heatHours: TENT_HOURS.value,
};

/** Reads a phase that places something; null when there is none of that id. */
export async function readPour(
  tx: Transaction,
  companyId: string,
  phaseId: string,
  given: GivenPour,
): Promise<Pour | null> {
  if (!isRowId(phaseId)) return null;
  const phase = await tx.phase.findFirst({ where: { id: phaseId, companyId }, include: POUR });
  if (!phase) return null;
  const points = await tx.holdPoint.findMany({
    where: { companyId, placementPhaseId: phase.id, kind: 'cure' },
    include: { phase: true },
    orderBy: { id: 'asc' },
  });
  const asked = points
    .flatMap(({ items }) => items as unknown as HoldPointItem[])
    .flatMap(({ unit, limit }) => (unit === 'psi' ? [limit.atLeast ?? 0] : []));
  const material = given.material ?? materialOf(phase);
  return {
    phase,
    cure:
      points.find(({ gate, phase: { durationKind } }) => gate === 'finish' && durationKind === 'elapsed')
        ?.phase ?? null,
    requiredPsi: Math.max(500, ...asked),
    material,
    mixture: { ...DEFAULT_MIXTURES[material], accelerated: given.accelerated ?? false },
    sectionInches: given.sectionInches ?? SECTION[material],
    placedF: given.placedTempF ?? PLACED_F,
    protection: given.protectionPlan ?? SMALL_POUR,
  };
}

function materialOf({ hatch }: Phase): Pour['material'] {
  if (hatch === 'masonry') return 'grout';
  return hatch === 'mortar' || hatch === 'stone' ? 'mortar' : 'concrete';
}
