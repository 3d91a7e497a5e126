import { Injectable, type OnModuleInit } from '@nestjs/common';
import { HttpAdapterHost } from '@nestjs/core';
import type { FastifyInstance, FastifyReply, FastifyRequest } from 'fastify';
import { LinkPurpose } from '../generated/prisma/enums.js';
import { CodedError } from '../platform/graphql/coded-error.js';
import { PictureFiles, type PictureSize, sendPicture } from '../photos/photos.face.js';
import { LinkSessions, pagePath } from '../signed-links/signed-links.face.js';
import { shownByLink } from './shown-by-link.js';

/**
 * GET /week/LINK/photos/ID and /sheet/LINK/photos/ID, each also with /small, give the pictures that the page of a link
 * shows, in the browser in which that link is open; 403 elsewhere, 404 for any other picture.
 */
@Injectable()
export class LinkPhotosRoute implements OnModuleInit {
  constructor(
    private readonly adapterHost: HttpAdapterHost,
    private readonly sessions: LinkSessions,
    private readonly files: PictureFiles,
  ) {}

  onModuleInit(): void {
    const server = this.adapterHost?.httpAdapter?.getInstance<FastifyInstance>();
    if (!server) return;
    const show = (size: PictureSize) => (request: FastifyRequest, reply: FastifyReply) =>
      this.show(size, request, reply);
    for (const purpose of Object.values(LinkPurpose)) {
      const pictures = `${pagePath({ id: ':linkId', purpose })}/photos/:photoId`;
      server.get(pictures, show('kept'));
      server.get(`${pictures}/small`, show('small'));
    }
  }

  private async show(size: PictureSize, request: FastifyRequest, reply: FastifyReply): Promise<unknown> {
    const { linkId, photoId } = request.params as { linkId: string; photoId: string };
    const holder = await this.sessions.holderOf(linkId, request.headers.cookie);
    if (holder instanceof CodedError || !holder.link)
      return reply.status(403).send({ code: 'not-allowed', message: 'Open the link that you were sent.' });
    const { companyId, link } = holder;
    return sendPicture(this.files, { companyId, only: shownByLink(link) }, { photoId, size }, request, reply);
  }
}
