import fastifyCookie from '@fastify/cookie';
import type { INestApplicationContext } from '@nestjs/common';
import { NestFactory } from '@nestjs/core';
import { GraphQLSchemaHost } from '@nestjs/graphql';
import { FastifyAdapter, type NestFastifyApplication } from '@nestjs/platform-fastify';
import { AppModule, CoreModule } from './app.module.js';
import { ChangeSteps } from './platform/change/change-steps.js';
import { CONFIG, type Config } from './platform/config/config.js';
import { BODY_LIMIT } from './platform/graphql/limits.js';
import { onlyJson } from './platform/graphql/only-json.js';
import { demandFreshSchema } from './platform/graphql/schema-file.js';
import { serveSubscriptions } from './platform/graphql/subscriptions.js';
import { nestLogger } from './platform/nest-logger.js';
import { WorkQueue } from './platform/queue/work-queue.js';
import { serveBoard } from './platform/web/serve-board.js';
import { Worker } from './worker/worker.js';

/** How long requests in hand may take to end when the service stops. */
const CLOSING_MILLISECONDS = 2000;

/** A running service. */
export interface Service {
  readonly app: NestFastifyApplication;
  /** Address it listens on. */
  readonly url: string;
  close(): Promise<void>;
}

/**
 * Starts the API: endpoint, subscriptions, files, and the built board where it is wanted.
 *
 * @throws Error when a promise of the boot does not hold (see the checks called here).
 */
export async function bootApi({ board = true }: { board?: boolean } = {}): Promise<Service> {
  const app = await NestFactory.create<NestFastifyApplication>(
    AppModule,
    new FastifyAdapter({ bodyLimit: BODY_LIMIT, genReqId: () => crypto.randomUUID() }),
    { logger: nestLogger, abortOnError: false },
  );
  const config = app.get<Config>(CONFIG);
  await app.register(fastifyCookie as never);
  app.getHttpAdapter().getInstance().addHook('preValidation', onlyJson);
  if (board) await serveBoard(app);
  await app.init();
  app.get(ChangeSteps).demandComplete();
  demandFreshSchema(app.get(GraphQLSchemaHost).schema);
  await app.get(WorkQueue).open();
  await app.listen({ port: config.FLAGWAY_PORT, host: config.FLAGWAY_HOST });
  const closeSubscriptions = serveSubscriptions(app, config.origin);
  return {
    app,
    url: (await app.getUrl()).replace('[::1]', 'localhost'),
    close: async () => {
      await closeSubscriptions();
      // Browsers open sockets ahead of use; no request ever ends those, so they are cut after a moment for the others.
      const http = app.getHttpServer();
      const cut = setTimeout(() => http.closeAllConnections(), CLOSING_MILLISECONDS);
      await app.close();
      clearTimeout(cut);
    },
  };
}

/**
 * Starts the worker: relay, consumer and sweep.
 *
 * @param beside the application of an API in the same process; without one the worker gets its own.
 * @returns stops the worker after the work in hand is done.
 * @throws Error when a promise of the boot does not hold, or the queue cannot be used.
 */
export async function bootWorker(beside?: INestApplicationContext): Promise<() => Promise<void>> {
  if (beside) return beside.get(Worker).start();
  const app = await NestFactory.createApplicationContext(CoreModule, {
    logger: nestLogger,
    abortOnError: false,
  });
  app.get(ChangeSteps).demandComplete();
  const stop = await app.get(Worker).start();
  return async () => {
    await stop();
    await app.close();
  };
}
