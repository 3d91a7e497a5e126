import type { EnteringQuery } from '../api/documents.js';
import { USUAL_CREWS, USUAL_EQUIPMENT } from './forms/usual.js';

/** The notes of the page in their order. */
export const STEPS = ['crews', 'equipment', 'authority', 'site', 'job'] as const;
export type StepKey = (typeof STEPS)[number];

type Entered = Pick<EnteringQuery, 'crews' | 'equipmentPools' | 'authorities' | 'sites'>;

/** Trades that an entry needs and no crew at work has. */
export function tradesMissing({ crews }: Pick<Entered, 'crews'>): string[] {
  const had = new Set(crews.filter(({ active }) => active).flatMap(({ trades }) => trades));
  return USUAL_CREWS.map(({ trade }) => trade).filter((trade) => !had.has(trade));
}

/** Kinds of equipment against the cold that the company has not entered, not even as none. */
export function equipmentMissing({ equipmentPools }: Pick<Entered, 'equipmentPools'>): string[] {
  return USUAL_EQUIPMENT.map(({ kind }) => kind).filter(
    (kind) => !equipmentPools.some((pool) => pool.kind === kind),
  );
}

/** What is still missing, told by what there is; a job is always still to be entered. */
export function stillMissing(entered: Entered): StepKey[] {
  const done: Record<StepKey, boolean> = {
    crews: tradesMissing(entered).length === 0,
    equipment: equipmentMissing(entered).length === 0,
    authority: entered.authorities.length > 0,
    site: entered.sites.edges.length > 0,
    job: false,
  };
  return STEPS.filter((key) => !done[key]);
}
