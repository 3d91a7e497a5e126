import { Injectable } from '@nestjs/common';
import type { Logger, Placement, Prisma } from '../../generated/prisma/client.js';
import type { Change } from '../../platform/change/change.js';
import { ChangeRunner } from '../../platform/change/change-runner.js';
import { contextOf } from '../../platform/context.js';
import { localTime } from '../../platform/local-time.js';
import { rowIds } from '../../platform/row-id.js';
import type { PostedReading, PostedReadings, RefusedReading } from './posted-readings.js';

/** How far a logger's clock may run ahead of ours. */
const AHEAD_MS = 5 * 60_000;

/** What came of a post. */
export interface PostAnswer {
  /** Readings that are new. */
  readonly taken: number;
  /** Readings that were there already, with the same value: a post sent again. */
  readonly known: number;
  readonly refused: readonly RefusedReading[];
}

type Place = Placement & { readonly job: { readonly site: { readonly zone: string } } };

/**
 * Takes what a logger posts. Its own reading time makes a post safe to repeat: a reading that is there already is
 * known, not new. Good readings of a post are kept although others are refused.
 */
@Injectable()
export class LoggerPostsService {
  constructor(private readonly changes: ChangeRunner) {}

  take(logger: Logger, { good, refused }: PostedReadings, requestId: string): Promise<PostAnswer> {
    const ctx = contextOf(
      { companyId: logger.companyId, personId: '', role: 'foreman', name: logger.name },
      requestId,
    );
    return this.changes.runInternal(ctx, async (change) => {
      const places = await placesOf(change, logger, good);
      const checked = good.map((reading) => check(reading, logger, places, change.now));
      const fit = checked.flatMap((one) => ('placement' in one ? one : []));
      const before = await readingsBefore(change, fit);
      const sorted = fit.map((one) => sort(one, before));
      const rows = sorted.flatMap((one) => (one.kind === 'new' ? one.row(logger) : []));
      if (rows.length > 0) {
        await change.tx.temperatureReading.createMany({ data: rows });
        await change.tx.logger.update({ where: { id: logger.id }, data: { lastPostAt: change.now } });
        tell(change, logger, places, rows);
      }
      const faults = [
        ...refused,
        ...checked.flatMap((one) => ('message' in one ? one : [])),
        ...sorted.flatMap((one) => (one.kind === 'refused' ? one.fault : [])),
      ];
      return {
        taken: rows.length,
        known: sorted.filter(({ kind }) => kind === 'known').length,
        refused: faults.sort((a, b) => a.index - b.index),
      };
    });
  }
}

/** The placements a logger may post for, of those that are named. */
async function placesOf(
  { tx }: Change,
  { companyId, siteId, placementId }: Logger,
  good: readonly PostedReading[],
): Promise<ReadonlyMap<string, Place>> {
  const named = rowIds(good.flatMap((reading) => reading.placementId ?? placementId ?? []));
  const rows = await tx.placement.findMany({
    where: {
      companyId,
      job: { siteId },
      AND: [{ id: { in: [...new Set(named)] } }, placementId ? { id: placementId } : {}],
    },
    include: { job: { select: { site: { select: { zone: true } } } } },
  });
  return new Map(rows.map((row) => [row.id, row]));
}

interface Fit {
  readonly reading: PostedReading;
  readonly placement: Place;
}

function check(
  reading: PostedReading,
  logger: Logger,
  places: ReadonlyMap<string, Place>,
  now: Date,
): Fit | RefusedReading {
  const { index, at } = reading;
  const id = reading.placementId ?? logger.placementId;
  if (id === null)
    return { index, message: 'This logger stands for a whole site: name the placement as "placementId".' };
  const placement = places.get(id.toLowerCase());
  if (!placement)
    return {
      index,
      message: 'This logger may not post for that placement, or there is none; look up its id.',
    };
  const { zone } = placement.job.site;
  if (at.getTime() > now.getTime() + AHEAD_MS)
    return {
      index,
      message: `${localTime(at, zone)} lies in the future here (it is ${localTime(now, zone)}); set the clock of the logger and send it again.`,
    };
  if (at < placement.placedAt)
    return {
      index,
      message: `It was placed only at ${localTime(placement.placedAt, zone)}; leave out readings from before.`,
    };
  return { reading, placement };
}

type Known = ReadonlyMap<string, number>;
const keyOf = (placementId: string, at: Date): string => `${placementId} ${at.getTime()}`;

async function readingsBefore({ tx }: Change, fit: readonly Fit[]): Promise<Map<string, number>> {
  const rows = await tx.temperatureReading.findMany({
    where: {
      placementId: { in: [...new Set(fit.map(({ placement }) => placement.id))] },
      at: { in: fit.map(({ reading }) => reading.at) },
    },
    select: { placementId: true, at: true, concreteF: true },
  });
  return new Map(rows.map(({ placementId, at, concreteF }) => [keyOf(placementId, at), concreteF]));
}

type Sorted =
  | { readonly kind: 'known' }
  | { readonly kind: 'refused'; readonly fault: RefusedReading }
  | { readonly kind: 'new'; row(logger: Logger): Prisma.TemperatureReadingCreateManyInput };

/** Whether a reading is new; a second one of the same instant in the same post counts like one that is there. */
function sort({ reading, placement }: Fit, before: Map<string, number>): Sorted {
  const { index, at, concreteF, airF } = reading;
  const key = keyOf(placement.id, at);
  const there = (before as Known).get(key);
  if (there === concreteF) return { kind: 'known' };
  if (there !== undefined) {
    const when = localTime(at, placement.job.site.zone);
    const message = `${there} °F is recorded for ${when} already and is kept; a reading is not changed afterwards.`;
    return { kind: 'refused', fault: { index, message } };
  }
  before.set(key, concreteF);
  return {
    kind: 'new',
    row: ({ id, companyId }) => ({
      companyId,
      placementId: placement.id,
      at,
      concreteF,
      airF,
      loggerId: id,
    }),
  };
}

/** One line of the journal for each placement: a logger posts often. */
function tell(
  change: Change,
  logger: Logger,
  places: ReadonlyMap<string, Place>,
  rows: readonly Prisma.TemperatureReadingCreateManyInput[],
): void {
  for (const placement of places.values()) {
    const own = rows.filter(({ placementId }) => placementId === placement.id);
    if (own.length === 0) continue;
    change.record({
      action: 'temperatures logged',
      subjectType: 'placement',
      subjectId: placement.id,
      jobId: placement.jobId,
      detail: { logger: logger.name, readings: own.length },
    });
  }
}
