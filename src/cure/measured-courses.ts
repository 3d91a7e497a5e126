import { Injectable } from '@nestjs/common';
import type { Context } from '../platform/context.js';
import { Database } from '../platform/database/database.js';
import { measuredStrengthOf } from './measured-cure.js';
import type { ReadPlacement } from './stored-placement.js';

/** A strength is worked out at so many moments of a course: more than a drawing can show, less than a logger reads. */
const MOST_MOMENTS = 60;

/** The strength at one moment. */
export interface MeasuredMoment {
  /** Milliseconds since 1970. */
  readonly at: number;
  /** Estimated strength by what was read up to then. */
  readonly psi: number;
}

/** What was measured of a placement, and nothing that is predicted: it does not change with the weather or the clock. */
export interface MeasuredCourse {
  readonly placementId: string;
  readonly requiredPsi: number;
  readonly course: readonly MeasuredMoment[];
  /** How the strength was computed, its source and its caution; null where nothing was read. */
  readonly words: string | null;
}

/** Gives what was measured of the placements of a job. */
@Injectable()
export class MeasuredCourses {
  constructor(private readonly database: Database) {}

  async ofJob({ companyId }: Context, jobId: string): Promise<MeasuredCourse[]> {
    const rows = await this.database.placement.findMany({
      where: { companyId, jobId },
      include: { readings: { orderBy: [{ at: 'asc' }, { id: 'asc' }] } },
      orderBy: [{ placedAt: 'asc' }, { id: 'asc' }],
    });
    return rows.map(courseOf);
  }
}

function courseOf(row: ReadPlacement): MeasuredCourse {
  const last = row.readings.at(-1);
  const strength = last && measuredStrengthOf(row, last.at);
  return {
    placementId: row.id,
    requiredPsi: row.requiredPsi,
    course: thinned(row.readings).map(({ at }) => ({
      at: at.getTime(),
      psi: measuredStrengthOf(row, at)?.strength ?? 0,
    })),
    words: strength
      ? `Method: ${strength.method} (${strength.source.text}). Caution: ${strength.caution}`
      : null,
  };
}

/** So many of a list, the first and the last among them. */
function thinned<T>(list: readonly T[]): readonly T[] {
  if (list.length <= MOST_MOMENTS) return list;
  const step = (list.length - 1) / (MOST_MOMENTS - 1);
  const taken = new Set(Array.from({ length: MOST_MOMENTS }, (_, i) => Math.round(i * step)));
  return list.filter((_, i) => taken.has(i));
}
