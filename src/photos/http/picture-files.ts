import { Injectable } from '@nestjs/common';
import type { Prisma } from '../../generated/prisma/client.js';
import { Database } from '../../platform/database/database.js';
import { isRowId } from '../../platform/row-id.js';

/** In which size a picture is asked for. */
export type PictureSize = 'kept' | 'small';

/** Whose pictures are looked among: those of a company, or only some of them. */
export interface PictureOwner {
  readonly companyId: string;
  /** Only photos that meet this as well. */
  readonly only?: Prisma.PhotoWhereInput;
}

/** Reads the bytes of pictures. */
@Injectable()
export class PictureFiles {
  constructor(private readonly database: Database) {}

  /** The content hash of a photo's picture; null when there is no such photo among those of the owner. */
  async hashOf({ companyId, only = {} }: PictureOwner, photoId: string): Promise<string | null> {
    if (!isRowId(photoId)) return null;
    const photo = await this.database.photo.findFirst({
      where: { AND: [only, { companyId, id: photoId }] },
      select: { fileHash: true },
    });
    return photo?.fileHash ?? null;
  }

  /** The bytes of a picture that a photo has. */
  async bytesOf(companyId: string, hash: string, size: PictureSize): Promise<Buffer> {
    const where = { companyId_hash: { companyId, hash } };
    const file =
      size === 'small'
        ? await this.database.photoFile.findUniqueOrThrow({ where, select: { small: true } })
        : await this.database.photoFile.findUniqueOrThrow({ where, select: { bytes: true } });
    return Buffer.from('small' in file ? file.small : file.bytes);
  }
}
