import { randomUUID } from 'node:crypto';
import { Injectable, type OnModuleInit } from '@nestjs/common';
import { HttpAdapterHost } from '@nestjs/core';
import type { FastifyInstance, FastifyReply, FastifyRequest } from 'fastify';
import { contextOf } from '../platform/context.js';
import { Authenticator } from '../platform/graphql/authenticator.js';
import { InvalidInput } from '../platform/outcomes/invalid-input.js';
import { NotFound } from '../platform/outcomes/not-found.js';
import { Refusal } from '../platform/outcomes/refusal.js';
import { ForecastsService } from './forecasts.service.js';
import { ForecastFormat } from './weather.inputs.js';

const SIZE_LIMIT = 2 * 1024 * 1024;
const UUID = /^[0-9a-f]{8}(-[0-9a-f]{4}){3}-[0-9a-f]{12}$/i;

interface ForecastRequest {
  Params: { siteId: string };
  Querystring: { source?: string };
  Body: unknown;
}

/**
 * POST /files/forecast/:siteId takes a forecast file, as text/csv or application/json by its content type. The header
 * Idempotency-Key (a UUID) makes a retry safe; `?source=` says where the file comes from. Answers are JSON, a faulty
 * file's with every fault and its line.
 */
@Injectable()
export class ForecastFileRoute implements OnModuleInit {
  constructor(
    private readonly adapterHost: HttpAdapterHost,
    private readonly authenticator: Authenticator,
    private readonly forecasts: ForecastsService,
  ) {}

  async onModuleInit(): Promise<void> {
    const server = this.adapterHost?.httpAdapter?.getInstance<FastifyInstance>();
    if (!server) return;
    await server.register((scope, _options, done) => {
      scope.removeAllContentTypeParsers();
      scope.addContentTypeParser(
        ['text/csv', 'application/json'],
        { parseAs: 'string', bodyLimit: SIZE_LIMIT },
        (_request, body, parsed) => parsed(null, body),
      );
      scope.setErrorHandler((error: Error & { statusCode?: number }, _request, reply) => {
        const known = HTTP_FAULTS[error.statusCode ?? 500];
        if (!known) throw error;
        return reply.status(error.statusCode ?? 500).send({ code: 'bad-request', message: known });
      });
      scope.post<ForecastRequest>('/files/forecast/:siteId', { bodyLimit: SIZE_LIMIT }, (request, reply) =>
        this.receive(request, reply),
      );
      done();
    });
  }

  private async receive(request: FastifyRequest<ForecastRequest>, reply: FastifyReply) {
    const actor = await this.authenticator.actorOf(request.headers.cookie);
    if (!actor) return reply.status(401).send({ code: 'not-signed-in', message: 'Sign in first.' });
    if (actor.role !== 'office' && actor.role !== 'foreman') {
      const message = `This needs the role office or foreman; you are signed in as ${actor.role}.`;
      return reply.status(403).send({ code: 'not-allowed', message });
    }
    const key = request.headers['idempotency-key'];
    if (key !== undefined && (typeof key !== 'string' || !UUID.test(key)))
      return reply.status(400).send({ code: 'bad-request', message: 'Idempotency-Key must be a UUID.' });
    const csv = request.headers['content-type']?.startsWith('text/csv') ?? false;
    const outcome = await this.forecasts.upload(contextOf(actor, String(request.id)), {
      clientKey: key ?? randomUUID(),
      siteId: request.params.siteId,
      source: request.query.source ?? 'uploaded file',
      text: typeof request.body === 'string' ? request.body : '',
      format: csv ? ForecastFormat.csv : ForecastFormat.json,
    });
    if (!(outcome instanceof Refusal)) {
      const { siteId, hours, notes } = outcome;
      return reply.status(200).send({ siteId, hours, notes });
    }
    const status = outcome instanceof NotFound ? 404 : outcome instanceof InvalidInput ? 422 : 409;
    return reply.status(status).send({
      code: outcome.code,
      message: outcome.message,
      ...(outcome instanceof InvalidInput ? { faults: outcome.faults.map(faultWithLine) } : {}),
    });
  }
}

const HTTP_FAULTS: Readonly<Record<number, string>> = {
  400: 'The request cannot be read; send the file as the body.',
  413: 'The file is larger than 2 MB; leave out hours that are far away.',
  415: 'Send the file as text/csv or application/json.',
};

function faultWithLine({ path, message }: { path: string; message: string }) {
  const line = /^text\.(\d+)$/.exec(path)?.[1];
  return { line: line === undefined ? 0 : Number(line), message };
}
