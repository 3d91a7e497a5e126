import { createHash } from 'node:crypto';
import { Injectable } from '@nestjs/common';
import type { Change } from '../platform/change/change.js';
import { ChangeRunner } from '../platform/change/change-runner.js';
import type { Context } from '../platform/context.js';
import { companyRow } from '../platform/database/company-row.js';
import { demandFound, demandRevision } from '../platform/outcomes/demand.js';
import { parseInput } from '../platform/outcomes/parse-input.js';
import type { Refusal } from '../platform/outcomes/refusal.js';
import { addPhoto, type PhotoAdded } from './add-photo.js';
import type { PhotoInput } from './photos.inputs.js';
import type { PhotoChanged } from './photos.outcomes.js';
import { releaseSchema, type SentPhoto } from './photos.schemas.js';
import { PictureMaker } from './pictures/picture-maker.js';

type Answer = Promise<PhotoChanged | Refusal>;

/** Photos: taken in from the site, released to the owner of the house and taken back. */
@Injectable()
export class PhotosService {
  constructor(
    private readonly changes: ChangeRunner,
    private readonly maker: PictureMaker,
  ) {}

  /**
   * Takes a photo in. The same picture of the same phase is one photo, under whatever key it comes.
   *
   * @throws PictureFault when it cannot be read as a picture.
   */
  async add(ctx: Context, sent: SentPhoto, bytes: Buffer): Promise<PhotoAdded | Refusal> {
    const picture = await this.maker.make(bytes);
    const sentHash = createHash('sha256').update(bytes).digest('hex');
    const input = { ...sent, sentHash };
    return this.changes.run(ctx, { operation: 'addPhoto', input }, async (change) => ({
      ...(await addPhoto(change, input, picture)),
    }));
  }

  /** Lets the owner of the house see a photo. */
  release(ctx: Context, input: PhotoInput): Answer {
    return this.changes.run(ctx, { operation: 'releasePhoto', input }, (change) =>
      setReleased(change, input, true),
    );
  }

  /** Keeps a photo in the company again. */
  takeBack(ctx: Context, input: PhotoInput): Answer {
    return this.changes.run(ctx, { operation: 'takeBackPhoto', input }, (change) =>
      setReleased(change, input, false),
    );
  }
}

/** Sets whether a photo is released; one that is so already stays as it is. */
async function setReleased(change: Change, input: PhotoInput, released: boolean) {
  parseInput(releaseSchema, input);
  const { tx, now, ctx } = change;
  const photo = demandFound(
    await tx.photo.findFirst({ where: companyRow(change, input.photoId), include: { phase: true } }),
    'photo',
  );
  if ((photo.releasedAt !== null) === released) return { photoId: photo.id };
  demandRevision(photo, input.revision, 'photo');
  await tx.photo.update({
    where: { id: photo.id },
    data: {
      releasedAt: released ? now : null,
      releasedById: released ? ctx.personId : null,
      revision: { increment: 1 },
    },
  });
  change.record({
    action: released ? 'photo released to the owner' : 'photo taken back from the owner',
    subjectType: 'photo',
    subjectId: photo.id,
    jobId: photo.jobId,
    detail: { phase: photo.phase.name, caption: photo.caption },
  });
  return { photoId: photo.id };
}
