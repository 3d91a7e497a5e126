import type { Change } from '../platform/change/change.js';
import { companyRow } from '../platform/database/company-row.js';
import { demandFound } from '../platform/outcomes/demand.js';
import { demandPast } from '../platform/outcomes/demand-past.js';
import type { SentPhoto } from './photos.schemas.js';
import type { Picture } from './pictures/make-picture.js';

/** What taking a photo in gives: whether it is new, or was there already. */
export interface PhotoAdded {
  readonly photoId: string;
  readonly answer: 'applied' | 'alreadyApplied';
}

/**
 * Puts a photo at its phase, and its picture into the company's store unless it lies there already.
 *
 * @throws Refused with NotFound for a phase or a hold point that the company has not, with InvalidInput for a moment to come.
 */
export async function addPhoto(
  change: Change,
  sent: SentPhoto & { readonly sentHash: string },
  { hash, ...picture }: Picture,
): Promise<PhotoAdded> {
  const { tx, now, ctx } = change;
  const { companyId } = ctx;
  const phase = demandFound(await tx.phase.findFirst({ where: companyRow(change, sent.phaseId) }), 'phase');
  const holdPointId = await holdPointOf(change, sent.holdPointId, phase.id);
  const takenAt = demandPast(change, sent.takenAt, 'takenAt');
  const { sentHash, caption = null } = sent;
  const known = await tx.photo.findUnique({
    where: { phaseId_sentHash: { phaseId: phase.id, sentHash } },
    select: { id: true },
  });
  if (known) return { photoId: known.id, answer: 'alreadyApplied' };
  await tx.photoFile.createMany({
    data: [{ companyId, hash, ...picture, bytes: bytesOf(picture.bytes), small: bytesOf(picture.small) }],
    skipDuplicates: true,
  });
  const photo = await tx.photo.create({
    data: {
      companyId,
      jobId: phase.jobId,
      phaseId: phase.id,
      holdPointId,
      sentHash,
      fileHash: hash,
      caption,
      takenAt,
      takenById: ctx.personId,
      addedAt: now,
    },
  });
  change.record({
    action: 'photo added',
    subjectType: 'photo',
    subjectId: photo.id,
    jobId: phase.jobId,
    detail: { phase: phase.name, caption },
  });
  return { photoId: photo.id, answer: 'applied' };
}

/** The hold point of the phase that a photo is about, if it names one. */
async function holdPointOf(change: Change, id: string | undefined, phaseId: string): Promise<string | null> {
  if (id === undefined) return null;
  const where = { ...companyRow(change, id), phaseId };
  return demandFound(await change.tx.holdPoint.findFirst({ where, select: { id: true } }), 'hold point').id;
}

/** Bytes as the database client takes them: over memory of their own. */
const bytesOf = (buffer: Buffer): Uint8Array<ArrayBuffer> => new Uint8Array(buffer);
