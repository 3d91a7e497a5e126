import { Injectable, type OnModuleInit } from '@nestjs/common';
import { HttpAdapterHost } from '@nestjs/core';
import type { FastifyInstance, FastifyReply, FastifyRequest } from 'fastify';
import { type Context, contextOf } from '../../platform/context.js';
import { Authenticator } from '../../platform/graphql/authenticator.js';
import { InvalidInput } from '../../platform/outcomes/invalid-input.js';
import { Refusal } from '../../platform/outcomes/refusal.js';
import { sentPhotoSchema } from '../photos.schemas.js';
import { PhotosService } from '../photos.service.js';
import { MOST_BYTES } from '../pictures/make-picture.js';
import { PictureFault } from '../pictures/picture-fault.js';
import { PHOTOS_PATH } from './photo-paths.js';
import { PictureFiles, type PictureSize } from './picture-files.js';
import { sendPicture } from './send-picture.js';

type SignedIn = FastifyRequest & { ctx?: Context };

const REFUSED: Readonly<Record<string, number>> = { NotFound: 404, KeyReused: 409, InvalidInput: 400 };

/**
 * POST /files/photos takes a picture as its body (image/jpeg, image/png, image/webp); who it belongs to stands in the
 * query: clientKey, phaseId, takenAt, and holdPointId, caption, fromOutbox where they are wanted. 201 for a new photo,
 * 200 for one that was there already, and otherwise `{code, message}` with 400, 401, 403, 404, 409, 413, 415 or 422.
 * GET /files/photos/ID and /files/photos/ID/small give the picture to people of the company.
 */
@Injectable()
export class PhotosRoute implements OnModuleInit {
  constructor(
    private readonly adapterHost: HttpAdapterHost,
    private readonly authenticator: Authenticator,
    private readonly photos: PhotosService,
    private readonly files: PictureFiles,
  ) {}

  async onModuleInit(): Promise<void> {
    const server = this.adapterHost?.httpAdapter?.getInstance<FastifyInstance>();
    if (!server) return;
    await server.register((scope, _options, done) => {
      scope.removeAllContentTypeParsers();
      scope.addContentTypeParser(
        /^image\/(jpeg|png|webp)\b/,
        { parseAs: 'buffer', bodyLimit: MOST_BYTES },
        (_request, body, parsed) => parsed(null, body),
      );
      scope.setErrorHandler((error: Error & { statusCode?: number }, _request, reply) => {
        const status = error instanceof PictureFault ? error.status : (error.statusCode ?? 500);
        const message = error instanceof PictureFault ? error.message : FAULTS[status];
        if (!message) throw error;
        return reply.status(status).send({ code: 'bad-picture', message });
      });
      // Before the body is read: nobody fills the memory without signing in.
      scope.addHook('onRequest', (request, reply) => this.demandSignedIn(request, reply));
      scope.post(PHOTOS_PATH, { bodyLimit: MOST_BYTES }, (request, reply) => this.receive(request, reply));
      const show = (size: PictureSize) => (request: FastifyRequest, reply: FastifyReply) =>
        this.show(size, request, reply);
      scope.get(`${PHOTOS_PATH}/:photoId`, show('kept'));
      scope.get(`${PHOTOS_PATH}/:photoId/small`, show('small'));
      done();
    });
  }

  private async demandSignedIn(request: SignedIn, reply: FastifyReply): Promise<unknown> {
    const actor = await this.authenticator.actorOfRequest(request);
    if (!actor) return reply.status(401).send({ code: 'not-signed-in', message: 'Sign in first.' });
    if (request.method === 'POST' && actor.role === 'viewer') {
      const message = 'You are signed in as viewer, who only looks; ask the office for another role.';
      return reply.status(403).send({ code: 'not-allowed', message });
    }
    request.ctx = contextOf(actor, String(request.id));
    return undefined;
  }

  private async receive(request: SignedIn, reply: FastifyReply): Promise<unknown> {
    const read = sentPhotoSchema.safeParse(request.query);
    if (!read.success) {
      const faults = read.error.issues.map(({ path, message }) => ({ path: path.join('.'), message }));
      return refuse(reply, new InvalidInput(faults));
    }
    if (!Buffer.isBuffer(request.body) || request.body.length === 0)
      throw new PictureFault(422, 'There is no picture in the request; send its bytes as the body.');
    const answer = await this.photos.add(ctxOf(request), read.data, request.body);
    if (answer instanceof Refusal) return refuse(reply, answer);
    return reply.status(answer.answer === 'applied' ? 201 : 200).send(answer);
  }

  private show(size: PictureSize, request: SignedIn, reply: FastifyReply): Promise<unknown> {
    const { photoId } = request.params as { photoId: string };
    const { companyId } = ctxOf(request);
    return sendPicture(this.files, { companyId }, { photoId, size }, request, reply);
  }
}

function ctxOf({ ctx }: SignedIn): Context {
  if (!ctx) throw new Error('A request came past the sign-in');
  return ctx;
}

function refuse(reply: FastifyReply, { code, message }: Refusal): unknown {
  return reply.status(REFUSED[code] ?? 409).send({ code, message });
}

const FAULTS: Readonly<Record<number, string>> = {
  400: 'The request cannot be read; send the bytes of one picture as the body.',
  413: `The picture is larger than ${MOST_BYTES / 1024 / 1024} MB; make it smaller and send it again.`,
  415: 'Send the picture as image/jpeg, image/png or image/webp.',
};
