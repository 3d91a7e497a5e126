import { createHash } from 'node:crypto';
import { Injectable, type OnModuleInit } from '@nestjs/common';
import { HttpAdapterHost } from '@nestjs/core';
import type { FastifyInstance, FastifyReply, FastifyRequest } from 'fastify';
import { contextOf } from '../platform/context.js';
import { Authenticator } from '../platform/graphql/authenticator.js';
import { AUDIENCES, type Audience } from './record-facts.js';
import { RecordMaker } from './record-maker.js';

/**
 * GET /files/records/NUMBER/owner.pdf and /files/records/NUMBER/company.pdf: the closing record of a job, to people of the
 * company. 304 when the caller has the same one, 401 without signing in, 404 for a job that the company has not.
 */
@Injectable()
export class RecordsRoute implements OnModuleInit {
  constructor(
    private readonly adapterHost: HttpAdapterHost,
    private readonly authenticator: Authenticator,
    private readonly maker: RecordMaker,
  ) {}

  onModuleInit(): void {
    const server = this.adapterHost?.httpAdapter?.getInstance<FastifyInstance>();
    for (const audience of AUDIENCES)
      server?.get(`/files/records/:number/${audience}.pdf`, (request, reply) =>
        this.show(audience, request, reply),
      );
  }

  private async show(audience: Audience, request: FastifyRequest, reply: FastifyReply): Promise<unknown> {
    const actor = await this.authenticator.actorOfRequest(request);
    if (!actor) return reply.status(401).send({ code: 'not-signed-in', message: 'Sign in first.' });
    const text = (request.params as { number: string }).number;
    const number = /^\d{1,9}$/.test(text) ? Number(text) : null;
    const ctx = contextOf(actor, String(request.id));
    const pdf = number === null ? null : await this.maker.make(ctx, number, audience);
    return sendRecord(reply, request, pdf, `closing-record-${number}-${audience}.pdf`);
  }
}

/** Answers with a record: 200, 304 when the caller has it, 404 when there is none. */
export function sendRecord(
  reply: FastifyReply,
  request: FastifyRequest,
  pdf: Buffer | null,
  name: string,
): unknown {
  reply.headers({ 'cache-control': 'private, no-cache', 'x-content-type-options': 'nosniff' });
  if (pdf === null) {
    const message = 'There is no such job. It may have been removed; look on the board for its number.';
    return reply.status(404).send({ code: 'NotFound', message });
  }
  const tag = `"${createHash('sha256').update(pdf).digest('hex')}"`;
  reply.header('etag', tag);
  if (request.headers['if-none-match'] === tag) return reply.status(304).send();
  return reply
    .header('content-type', 'application/pdf')
    .header('content-disposition', `attachment; filename="${name}"`)
    .send(pdf);
}
