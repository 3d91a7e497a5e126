import { Injectable, type OnModuleInit } from '@nestjs/common';
import { HttpAdapterHost } from '@nestjs/core';
import type { FastifyInstance, FastifyReply, FastifyRequest } from 'fastify';
import { LoggerGate } from './logger-gate.js';
import { LoggerPostsService } from './logger-posts.service.js';
import { READINGS_PATH } from './loggers.service.js';
import { readPost } from './posted-readings.js';

const SIZE_LIMIT = 64 * 1024;

/**
 * POST /loggers/readings takes temperatures from a logger as JSON, with the header Authorization: Bearer TOKEN. The answer
 * is `{taken, known, refused: [{index, message}]}`: 200 when nothing is refused, 422 when something is (what was good
 * is kept all the same), 400 for a body that cannot be read, 401 for a token nobody has, 413, 415, and 429 with
 * Retry-After. Sending the same post again changes nothing.
 */
@Injectable()
export class LoggerReadingsRoute implements OnModuleInit {
  constructor(
    private readonly adapterHost: HttpAdapterHost,
    private readonly gate: LoggerGate,
    private readonly posts: LoggerPostsService,
  ) {}

  async onModuleInit(): Promise<void> {
    const server = this.adapterHost?.httpAdapter?.getInstance<FastifyInstance>();
    if (!server) return;
    await server.register((scope, _options, done) => {
      scope.removeAllContentTypeParsers();
      scope.addContentTypeParser(
        'application/json',
        { parseAs: 'string', bodyLimit: SIZE_LIMIT },
        (_request, body, parsed) => parsed(null, body),
      );
      scope.setErrorHandler((error: Error & { statusCode?: number }, _request, reply) => {
        const known = HTTP_FAULTS[error.statusCode ?? 500];
        if (!known) throw error;
        return reply.status(error.statusCode ?? 500).send({ code: 'bad-request', message: known });
      });
      scope.post(READINGS_PATH, { bodyLimit: SIZE_LIMIT }, (request, reply) => this.receive(request, reply));
      done();
    });
  }

  private async receive(request: FastifyRequest, reply: FastifyReply) {
    const passed = await this.gate.pass(request.headers.authorization);
    if (!('logger' in passed)) {
      if (passed.retryAfterSeconds) reply.header('retry-after', String(passed.retryAfterSeconds));
      if (passed.status === 401) reply.header('www-authenticate', 'Bearer');
      const code = passed.status === 401 ? 'unknown-logger' : 'too-many-posts';
      return reply.status(passed.status).send({ code, message: passed.message });
    }
    const read = readPost(parsed(request.body));
    if (typeof read === 'string') return reply.status(400).send({ code: 'bad-request', message: read });
    const answer = await this.posts.take(passed.logger, read, String(request.id));
    return reply.status(answer.refused.length > 0 ? 422 : 200).send(answer);
  }
}

function parsed(body: unknown): unknown {
  try {
    return JSON.parse(String(body));
  } catch {
    return null;
  }
}

const HTTP_FAULTS: Readonly<Record<number, string>> = {
  400: 'The request cannot be read; send a JSON body.',
  413: 'The post is larger than 64 KB; send fewer readings at a time.',
  415: 'Send the readings as application/json.',
};
