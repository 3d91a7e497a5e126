import { judgeReading } from '../../../shared/heating/judge-reading.js';
import type { CableReading } from '../../generated/prisma/client.js';
import { type Finding, findingOf } from '../../inspections/inspections.face.js';
import { coreReading, labelOf, type ReadSet } from '../stored-set.js';

/** What was found about a reading, as it is kept beside it. */
export interface StoredFinding {
  readonly findings: Finding[];
  /** Things to look at although the reading is accepted. */
  readonly warnings: string[];
  /** What may not be done until a later reading is accepted; null for an accepted one. */
  readonly forbids: string | null;
}

type Taken = Pick<CableReading, 'stage' | 'areaId' | 'at' | 'ohms' | 'megaohms' | 'testVolts' | 'cableTempF'>;

/** Holds a reading of a set against its label and against the readings before it. */
export function judgeStored(set: ReadSet, taken: Taken): { accepted: boolean; finding: StoredFinding } {
  const earlier = set.readings.filter(({ at }) => at < taken.at).map((row) => coreReading(set, row));
  const { ok, findings, warnings, forbids } = judgeReading(labelOf(set), coreReading(set, taken), earlier);
  return {
    accepted: ok,
    finding: { findings: findings.map(findingOf), warnings: [...warnings], forbids },
  };
}
