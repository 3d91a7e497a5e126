import { MercuriusDriver, type MercuriusDriverConfig } from '@nestjs/mercurius';
import { Module } from '@nestjs/common';
import { APP_GUARD } from '@nestjs/core';
import { GraphQLModule } from '@nestjs/graphql';
import type { FastifyReply, FastifyRequest } from 'fastify';
import { contextOf } from '../context.js';
import { Authenticator } from './authenticator.js';
import { CodedError } from './coded-error.js';
import { demandReach } from './demand-reach.js';
import { formatError, singleErrors, statusOf } from './error-formatter.js';
import { documentLimits } from './limits.js';
import { LinkAuthenticator } from './link-authenticator.js';
import type { RequestContext } from './request-context.js';
import { SignedInGuard } from './signed-in.guard.js';
import './strict-date-time.js';

/** The GraphQL endpoint: code first, compiled documents, bounded, batching off. */
@Module({
  imports: [
    GraphQLModule.forRootAsync<MercuriusDriverConfig>({
      driver: MercuriusDriver,
      inject: [Authenticator, LinkAuthenticator],
      useFactory: (authenticator: Authenticator, links: LinkAuthenticator) => ({
        path: '/graphql',
        autoSchemaFile: true,
        sortSchema: true,
        graphiql: false,
        allowBatchedQueries: false,
        subscription: false,
        validationRules: [...documentLimits],
        context: async (request: FastifyRequest, reply: FastifyReply): Promise<RequestContext> => {
          const holder = await links.holderOfRequest(request);
          if (holder instanceof CodedError) return { request, reply, ctx: null, closed: holder };
          const actor = holder ?? (await authenticator.actorOfRequest(request));
          return { request, reply, ctx: actor && contextOf(actor, String(request.id)) };
        },
        hooks: {
          preExecution: (schema, document, context) => {
            demandReach(schema, document, context as unknown as RequestContext);
          },
        },
        errorFormatter: (execution, context) => ({
          statusCode: statusOf(execution.errors ?? []),
          response: {
            data: execution.data ?? null,
            errors: singleErrors(execution.errors ?? []).map((error) =>
              formatError(error, String((context as { reply?: FastifyReply }).reply?.request.id ?? 'ws')),
            ) as never,
          },
        }),
      }),
    }),
  ],
  providers: [{ provide: APP_GUARD, useClass: SignedInGuard }],
})
export class ApiModule {}
