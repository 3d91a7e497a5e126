import type { IncomingMessage, Server } from 'node:http';
import type { Duplex } from 'node:stream';
import { GraphQLSchemaHost } from '@nestjs/graphql';
import type { INestApplication } from '@nestjs/common';
import {
  type ExecutionArgs,
  type GraphQLError,
  type GraphQLFormattedError,
  specifiedRules,
  validate,
} from 'graphql';
import { CloseCode } from 'graphql-ws';
import { useServer } from 'graphql-ws/use/ws';
import { WebSocketServer } from 'ws';
import { contextOf } from '../context.js';
import { Authenticator } from './authenticator.js';
import { formatError } from './error-formatter.js';
import { documentLimits } from './limits.js';
import type { RequestContext } from './request-context.js';

/**
 * Serves subscriptions at /graphql with the `graphql-transport-ws` protocol. A connection without a valid session is
 * closed with the protocol's own code for "forbidden", one from another origin is not upgraded.
 *
 * @returns closes all connections.
 */
export function serveSubscriptions(app: INestApplication, origin: string): () => Promise<void> {
  const http = app.getHttpServer() as Server;
  const authenticator = app.get(Authenticator);
  const { schema } = app.get(GraphQLSchemaHost);
  const sockets = new WebSocketServer({ noServer: true, maxPayload: 64 * 1024 });
  http.on('upgrade', (request: IncomingMessage, socket: Duplex, head: Buffer) => {
    const { pathname } = new URL(request.url ?? '/', 'http://localhost');
    if (pathname !== '/graphql' || !sameOrigin(request, origin)) return socket.destroy();
    sockets.handleUpgrade(request, socket, head, (opened) => sockets.emit('connection', opened, request));
  });
  const dispose = useServer(
    {
      schema,
      onConnect: async ({ extra }) => {
        if (await authenticator.actorOf(extra.request.headers.cookie)) return true;
        extra.socket.close(CloseCode.Forbidden, 'Sign in first.');
        return false;
      },
      context: async ({ extra }): Promise<RequestContext> => {
        const actor = await authenticator.actorOf(extra.request.headers.cookie);
        return { request: null, reply: null, ctx: actor && contextOf(actor, 'ws') };
      },
      validate: (documentSchema, document) =>
        validate(documentSchema, document, [...specifiedRules, ...documentLimits]),
      onError: (_context, _id, _payload, errors) => errors.map(shown),
      onNext: (_context, _id, _payload, _args: ExecutionArgs, result) =>
        result.errors ? { data: result.data ?? null, errors: result.errors.map(shown) } : undefined,
    },
    sockets,
  );
  return async () => {
    await dispose.dispose();
  };
}

const shown = (error: GraphQLError): GraphQLFormattedError => formatError(error, 'ws');

/** Browsers name the page's origin on an upgrade; other clients send none. */
function sameOrigin(request: IncomingMessage, origin: string): boolean {
  const from = request.headers.origin;
  return !from || from === origin || new URL(from).host === request.headers.host;
}
