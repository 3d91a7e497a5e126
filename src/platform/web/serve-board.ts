import { existsSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import fastifyStatic from '@fastify/static';
import type { NestFastifyApplication } from '@nestjs/platform-fastify';
import type { FastifyReply } from 'fastify';

/** Pages of the client; each is answered with the one built document. */
const PAGES = [
  '/',
  '/site',
  '/jobs/:number',
  '/jobs/:number/design',
  '/hookups/:id',
  '/sheet/:id',
  '/week/:id',
  '/sign-in',
];

const SECURITY_HEADERS = {
  'content-security-policy':
    "default-src 'self'; img-src 'self' data: blob:; style-src 'self' 'unsafe-inline'; connect-src 'self' ws: wss:; frame-ancestors 'none'; base-uri 'none'; form-action 'self'",
  'x-content-type-options': 'nosniff',
  'referrer-policy': 'same-origin',
};

/**
 * Serves the built board beside the API.
 *
 * @throws Error telling to build when the built files are missing.
 */
export async function serveBoard(app: NestFastifyApplication): Promise<void> {
  const root = boardFolder();
  if (!root) throw new Error('The board is not built; run "npm run build" or start with "npm start".');
  const fastify = app.getHttpAdapter().getInstance();
  fastify.addHook('onSend', async (_request, reply) => {
    // What answers for itself, as a picture does, may say something stricter.
    for (const [name, value] of Object.entries(SECURITY_HEADERS))
      if (!reply.hasHeader(name)) void reply.header(name, value);
  });
  await fastify.register(
    fastifyStatic as never,
    {
      root,
      wildcard: false,
      cacheControl: false,
      setHeaders: (reply: FastifyReply, path: string) => {
        void reply.header(
          'cache-control',
          path.includes('/assets/') ? 'public, max-age=31536000, immutable' : 'no-cache',
        );
      },
    } as never,
  );
  for (const page of PAGES.filter((path) => path !== '/')) {
    fastify.get(page, (_request, reply) =>
      (reply as FastifyReply & { sendFile(name: string): unknown }).sendFile('index.html'),
    );
  }
}

/** The folder that Vite builds into, seen from the source tree and from the compiled one. */
function boardFolder(): string | undefined {
  return ['../../../board/dist', '../../../../board/dist']
    .map((path) => fileURLToPath(new URL(path, import.meta.url)))
    .find((path) => existsSync(`${path}/index.html`));
}
