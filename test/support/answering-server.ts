import { createServer, type IncomingMessage, type ServerResponse } from 'node:http';
import type { AddressInfo } from 'node:net';

/*
 * A web server on this machine that answers as the test says, faults included.
 *
 *   const server = await startAnswering();
 *   server.answer = ({ url }) => ({ body: '{}', headers: { etag: '"1"' } });
 *   server.asked                                   // what was asked, in order
 *   await server.stop();                           // in afterAll
 */

/** What the server does with one request. */
export interface Reply {
  readonly status?: number;
  readonly headers?: Readonly<Record<string, string>>;
  readonly body?: string;
  /** `hang` never answers, `hang-in-body` stops half way and keeps the line, `break` cuts it half way. */
  readonly fault?: 'hang' | 'hang-in-body' | 'break';
}

export interface Asked {
  readonly path: string;
  readonly headers: IncomingMessage['headers'];
}

/** A server at work. */
export interface AnsweringServer {
  readonly url: string;
  readonly asked: Asked[];
  answer: (asked: Asked) => Reply | Promise<Reply>;
  stop(): Promise<void>;
}

/** Starts a server that finds nothing until it is told what to answer. */
export async function startAnswering(): Promise<AnsweringServer> {
  const asked: Asked[] = [];
  const server = createServer((request, response) => {
    const one = { path: request.url ?? '', headers: request.headers };
    asked.push(one);
    void Promise.resolve(answering.answer(one)).then((reply) => send(response, reply));
  });
  await new Promise<void>((resolve) => server.listen(0, '127.0.0.1', resolve));
  const { port } = server.address() as AddressInfo;
  const answering: AnsweringServer = {
    url: `http://127.0.0.1:${port}`,
    asked,
    answer: () => ({ status: 404 }),
    stop: async () => {
      server.closeAllConnections();
      await new Promise((resolve) => server.close(resolve));
    },
  };
  return answering;
}

function send(response: ServerResponse, { status = 200, headers = {}, body = '', fault }: Reply): void {
  if (fault === 'hang') return;
  if (fault === undefined) {
    response.writeHead(status, headers).end(status === 304 ? undefined : body);
    return;
  }
  const length = String(Buffer.byteLength(body));
  response.writeHead(status, { ...headers, 'content-length': length });
  response.write(body.slice(0, Math.floor(body.length / 2)), () => {
    if (fault === 'break') response.destroy();
  });
}
