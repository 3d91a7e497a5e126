import { Injectable } from '@nestjs/common';
import type { CableReading, Prisma } from '../generated/prisma/client.js';
import { WrongState } from '../phases/phases.face.js';
import type { Change } from '../platform/change/change.js';
import { ChangeRunner } from '../platform/change/change-runner.js';
import type { Context } from '../platform/context.js';
import { companyRow } from '../platform/database/company-row.js';
import { demandFound, demandRevision } from '../platform/outcomes/demand.js';
import { demandPast, refuseInput } from '../platform/outcomes/demand-past.js';
import { parseInput } from '../platform/outcomes/parse-input.js';
import { type Refusal, Refused } from '../platform/outcomes/refusal.js';
import { rowIds } from '../platform/row-id.js';
import type { ReceiveHeatingSetInput, RecordCableReadingInput } from './heating.inputs.js';
import type { HeatingSetChanged } from './heating.outcomes.js';
import { readingSchema, receiveSchema } from './heating.schemas.js';
import { deriveReadingHoldPoints } from './readings/derive-hold-points.js';
import { judgeStored } from './readings/judge-stored.js';
import { READ_SET, type ReadSet } from './stored-set.js';

type Answer = Promise<HeatingSetChanged | Refusal>;

/** Heating sets from delivery to the last reading. */
@Injectable()
export class HeatingService {
  constructor(private readonly changes: ChangeRunner) {}

  /** Takes the label as delivered. Readings that stand already are held against the new label. */
  receive(ctx: Context, input: ReceiveHeatingSetInput): Answer {
    return this.changes.run(ctx, { operation: 'receiveHeatingSet', input }, async (change) => {
      const { clientKey: _, ...label } = parseInput(receiveSchema, input);
      const set = demandFound(
        await change.tx.heatingSet.findFirst({
          where: { companyId: ctx.companyId, jobId: { in: rowIds([input.jobId]) }, key: input.key },
          include: { hookup: true },
        }),
        'heating set',
      );
      demandRevision(set, input.revision, 'heating set');
      if (set.hookup?.state === 'done')
        throw new Refused(
          new WrongState('done', `${set.name} is hooked up; its label is part of the record now.`),
        );
      const receivedAt = demandPast(change, label.receivedAt, 'receivedAt');
      await change.tx.heatingSet.update({
        where: { id: set.id },
        data: { ...givenOf(label), receivedAt, revision: { increment: 1 } },
      });
      change.record({
        action: 'heating set received',
        subjectType: 'heatingSet',
        subjectId: set.id,
        jobId: set.jobId,
        detail: { name: label.name ?? set.name, watts: label.watts, volts: label.volts, ohms: label.ohms },
      });
      await judgeAgain(change, set.id);
      return { heatingSetId: set.id, readingId: null };
    });
  }

  /** Records a reading with what the label says about it; a failing one is recorded too and releases nothing. */
  recordReading(ctx: Context, input: RecordCableReadingInput): Answer {
    return this.changes.run(ctx, { operation: 'recordCableReading', input }, async (change) => {
      const given = parseInput(readingSchema, input);
      const set = demandFound(
        await change.tx.heatingSet.findFirst({
          where: companyRow(change, input.heatingSetId),
          include: READ_SET,
        }),
        'heating set',
      );
      demandRevision(set, input.revision, 'heating set');
      const at = demandPast(change, given.at);
      if (!set.receivedAt)
        throw new Refused(
          new WrongState('not received', `${set.name} is not received; enter its label as delivered first.`),
        );
      if (at < set.receivedAt)
        refuseInput('at', `${set.name} came only at ${set.receivedAt.toISOString()}; enter a later time.`);
      const taken = { ...given, at, stage: input.stage, areaId: demandArea(set, input) };
      const { accepted, finding } = judgeStored(set, taken);
      const reading = await change.tx.cableReading.create({
        data: {
          companyId: ctx.companyId,
          heatingSetId: set.id,
          stage: taken.stage,
          areaId: taken.areaId,
          at,
          ohms: taken.ohms,
          megaohms: taken.megaohms,
          testVolts: taken.testVolts,
          cableTempF: taken.cableTempF,
          byId: ctx.personId || null,
          accepted,
          finding: finding as unknown as Prisma.InputJsonObject,
        },
      });
      await change.tx.heatingSet.update({ where: { id: set.id }, data: { revision: { increment: 1 } } });
      change.record({
        action: accepted ? 'cable reading accepted' : 'cable reading outside its limits',
        subjectType: 'heatingSet',
        subjectId: set.id,
        jobId: set.jobId,
        detail: { stage: taken.stage, ohms: taken.ohms, megaohms: taken.megaohms, accepted },
      });
      await deriveReadingHoldPoints(change, { ...set, readings: [...set.readings, reading] });
      return { heatingSetId: set.id, readingId: reading.id };
    });
  }
}

/** The area a reading belongs to: one of the set's for laid and covered, none for the other stages. */
function demandArea(set: ReadSet, { stage, areaId }: RecordCableReadingInput): string | null {
  if (stage !== 'laid' && stage !== 'covered') {
    if (areaId) refuseInput('areaId', `A reading of this stage is of the whole set; leave the area out.`);
    return null;
  }
  const [only, ...more] = set.areas;
  if (!areaId && only && more.length === 0) return only.areaId;
  const found = set.areas.find((part) => part.areaId === areaId);
  const names = set.areas.map(({ area }) => area.name).join(', ');
  return (
    found?.areaId ?? refuseInput('areaId', `Say which area was ${stage}; ${set.name} runs through ${names}.`)
  );
}

/** Holds the readings of a set against its label anew, in order of time, and brings its hold points in line. */
async function judgeAgain(change: Change, heatingSetId: string): Promise<void> {
  const set = await change.tx.heatingSet.findUniqueOrThrow({
    where: { id: heatingSetId },
    include: READ_SET,
  });
  const readings: CableReading[] = [];
  for (const reading of set.readings) {
    const { accepted, finding } = judgeStored(set, reading);
    readings.push(
      await change.tx.cableReading.update({
        where: { id: reading.id },
        data: { accepted, finding: finding as unknown as Prisma.InputJsonObject },
      }),
    );
  }
  await deriveReadingHoldPoints(change, { ...set, readings });
}

/** The values that were given; what was left out stays as designed. */
function givenOf<T extends object>(label: T): { [K in keyof T]: NonNullable<T[K]> } {
  return Object.fromEntries(Object.entries(label).filter(([, value]) => value != null)) as never;
}
