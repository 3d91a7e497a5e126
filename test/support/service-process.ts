import { type ChildProcess, spawn } from 'node:child_process';
import { fileURLToPath } from 'node:url';

/*
 * The built service as a process of its own, to be killed.
 *
 *   const worker = await startProcess({ ...settings, FLAGWAY_ROLES: 'worker' });
 *   await worker.kill();                             // SIGKILL: no chance to tidy up
 *   const api = await startProcess({ ...settings, FLAGWAY_ROLES: 'api', FLAGWAY_FAULT_POINT: 'after-commit' });
 *   await api.died();                                // waits until the point was reached
 */

/** A running process of the service. */
export interface ServiceProcess {
  /** Address of the API; empty for a worker. */
  readonly url: string;
  /** Waits until it has ended by itself; gives the signal that ended it, or its exit code. */
  died(milliseconds?: number): Promise<NodeJS.Signals | number | null>;
  /** Ends it with SIGKILL. */
  kill(): Promise<void>;
  /** Ends it as an operator would, with SIGTERM. */
  stop(): Promise<void>;
}

const MAIN = fileURLToPath(new URL('../../dist/src/main.js', import.meta.url));
const BOOT_MILLISECONDS = 60_000;

/** Settings of the process that runs the tests which must not reach the service. */
const inherited = (): Record<string, string | undefined> =>
  Object.fromEntries(
    Object.entries(process.env).filter(
      ([name]) => !/^(FLAGWAY_|DATABASE_URL|REDIS_URL|NODE_OPTIONS|JEST_)/.test(name),
    ),
  );

/** Starts the built service and waits until it is ready. @throws Error with what it wrote when it ends instead. */
export async function startProcess(settings: Record<string, string>): Promise<ServiceProcess> {
  const child = spawn(process.execPath, [MAIN], {
    env: { ...inherited(), FLAGWAY_PORT: '0', FLAGWAY_LOG: 'info', ...settings },
    stdio: ['ignore', 'ignore', 'pipe', 'ipc'],
  });
  let written = '';
  child.stderr?.setEncoding('utf8').on('data', (text: string) => (written += text));
  const ended = new Promise<NodeJS.Signals | number | null>((resolve) =>
    child.once('exit', (code, signal) => resolve(signal ?? code)),
  );
  await ready(child, ended, () => written);
  return {
    url: /"Flagway serves","url":"([^"]+)"/.exec(written)?.[1] ?? '',
    died: async (milliseconds = 60_000) => {
      let timer: NodeJS.Timeout | undefined;
      const late = new Promise<never>((_, reject) => {
        timer = setTimeout(
          () => reject(new Error(`It is still running. It wrote:\n${written}`)),
          milliseconds,
        );
      });
      return Promise.race([ended, late]).finally(() => clearTimeout(timer));
    },
    kill: async () => {
      child.kill('SIGKILL');
      await ended;
    },
    stop: async () => {
      child.kill('SIGTERM');
      await ended;
    },
  };
}

async function ready(
  child: ChildProcess,
  ended: Promise<NodeJS.Signals | number | null>,
  written: () => string,
): Promise<void> {
  let timer: NodeJS.Timeout | undefined;
  const failed = async (): Promise<never> => {
    const how = await Promise.race([
      ended,
      new Promise<string>((resolve) => (timer = setTimeout(() => resolve('no answer'), BOOT_MILLISECONDS))),
    ]);
    throw new Error(`The service did not start (${how}). It wrote:\n${written()}`);
  };
  try {
    await Promise.race([
      new Promise<void>((resolve) =>
        child.on('message', (message) => {
          if ((message as { ready?: boolean }).ready) resolve();
        }),
      ),
      failed(),
    ]);
  } finally {
    clearTimeout(timer);
  }
}
