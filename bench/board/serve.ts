import { readFile } from 'node:fs/promises';
import { createServer } from 'node:http';
import type { AddressInfo } from 'node:net';
import { extname, join, normalize } from 'node:path';
import type { Answers } from './answers.js';

const TYPES: Readonly<Record<string, string>> = {
  '.html': 'text/html; charset=utf-8',
  '.js': 'text/javascript',
  '.css': 'text/css',
  '.svg': 'image/svg+xml',
};

/** The built client at an address of this machine, and the answers to what it asks. */
export interface Served {
  readonly url: string;
  readonly stop: () => Promise<void>;
}

/** Serves the client from a folder. */
export async function serve(folder: string, answers: Answers): Promise<Served> {
  const server = createServer((request, response) => {
    void (async () => {
      const path = new URL(request.url ?? '/', 'http://localhost').pathname;
      if (path === '/graphql') {
        const chunks: Buffer[] = [];
        for await (const chunk of request) chunks.push(chunk as Buffer);
        const asked = JSON.parse(Buffer.concat(chunks).toString()) as {
          query: string;
          variables?: Record<string, unknown>;
        };
        const name = /(?:query|mutation)\s+(\w+)/.exec(asked.query)?.[1] ?? '';
        response.setHeader('content-type', 'application/json');
        response.end(JSON.stringify({ data: answers(name, asked.variables ?? {}) }));
        return;
      }
      const file = extname(path) ? normalize(path) : '/index.html';
      const body = await readFile(join(folder, file));
      response.setHeader('content-type', TYPES[extname(file)] ?? 'application/octet-stream');
      response.end(body);
    })().catch(() => {
      response.statusCode = 404;
      response.end();
    });
  });
  await new Promise<void>((resolve) => void server.listen(0, '127.0.0.1', resolve));
  const { port } = server.address() as AddressInfo;
  return {
    url: `http://127.0.0.1:${port}`,
    stop: () =>
      new Promise((resolve) => {
        server.closeAllConnections();
        server.close(() => resolve());
      }),
  };
}
