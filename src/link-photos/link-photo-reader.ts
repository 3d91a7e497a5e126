import { Injectable } from '@nestjs/common';
import type { Context, LinkScope } from '../platform/context.js';
import { Database } from '../platform/database/database.js';
import { WITH_SIZE } from '../photos/photos.face.js';
import { pagePath } from '../signed-links/signed-links.face.js';
import type { LinkPhoto } from './link-photo.model.js';
import { shownByLink } from './shown-by-link.js';

/** Most photos of one page, the newest. */
const MOST = 60;

/** Reads the photos that a link shows, newest first. */
@Injectable()
export class LinkPhotoReader {
  constructor(private readonly database: Database) {}

  async of({ companyId }: Context, link: LinkScope): Promise<LinkPhoto[]> {
    const rows = await this.database.photo.findMany({
      where: { AND: [shownByLink(link), { companyId }] },
      include: WITH_SIZE,
      orderBy: [{ takenAt: 'desc' }, { id: 'desc' }],
      take: MOST,
    });
    return rows.map(({ id, caption, takenAt, file }) => {
      const path = `${pagePath(link)}/photos/${id}`;
      return { id, caption, takenAt, path, smallPath: `${path}/small`, ...file };
    });
  }
}
