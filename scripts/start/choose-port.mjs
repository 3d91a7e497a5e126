import { createServer } from 'node:net';

const DEFAULT = 4480;

function free(port, host) {
  return new Promise((resolve) => {
    const server = createServer();
    server.once('error', () => resolve(false));
    server.listen(port, host, () => server.close(() => resolve(true)));
  });
}

/** The port to serve on: the one that is set, else 4480, else the next free one. @throws Error when a set one is taken */
export async function choosePort(env) {
  const host = env.FLAGWAY_HOST ?? '127.0.0.1';
  if (env.FLAGWAY_PORT !== undefined) {
    const port = Number(env.FLAGWAY_PORT);
    if (port !== 0 && !(await free(port, host))) {
      throw new Error(
        `Port ${port} is taken. Set FLAGWAY_PORT to another one, or leave it unset to have one chosen.`,
      );
    }
    return port;
  }
  for (let port = DEFAULT; port < DEFAULT + 100; port += 1) if (await free(port, host)) return port;
  throw new Error(`No port from ${DEFAULT} to ${DEFAULT + 99} is free. Set FLAGWAY_PORT.`);
}
