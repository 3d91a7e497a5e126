import 'reflect-metadata';
import type { INestApplicationContext } from '@nestjs/common';
import { bootApi, bootWorker } from './boot.js';
import { parseConfig } from './platform/config/config.js';
import { log, setLogLevel } from './platform/log.js';

const config = parseConfig(process.env);
setLogLevel(config.FLAGWAY_LOG);

const closers: (() => Promise<void>)[] = [];
let api: INestApplicationContext | undefined;

if (config.FLAGWAY_ROLES.includes('api')) {
  const service = await bootApi();
  api = service.app;
  closers.push(() => service.close());
  log('info', 'Flagway serves', { url: service.url });
}

if (config.FLAGWAY_ROLES.includes('worker')) {
  closers.push(await bootWorker(api));
  log('info', 'Flagway works off reminders and notices');
}

let stopping = false;
async function stop(signal: string): Promise<void> {
  if (stopping) return;
  stopping = true;
  log('info', 'Stopping', { signal });
  for (const close of closers.reverse()) await close();
  process.exit(0);
}
for (const signal of ['SIGINT', 'SIGTERM'] as const) process.once(signal, () => void stop(signal));
process.once('disconnect', () => void stop('disconnect'));
process.send?.({ ready: true });
