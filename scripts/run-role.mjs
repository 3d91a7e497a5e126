import { prepare, say } from './house/prepare.mjs';
import { tell } from './house/tell.mjs';

/*
 * npm run api, npm run worker: one role in a process of its own, on servers that DATABASE_URL (and REDIS_URL) name. As
 * many of each may run as wanted.
 */

const role = process.argv[2];

await tell(async () => {
  if (role !== 'api' && role !== 'worker') throw new Error('Say which role: api or worker.');
  if (!process.env.DATABASE_URL) {
    throw new Error(
      `npm run ${role} needs DATABASE_URL, the postgresql:// address of a server that both processes use. ` +
        'To run everything on this machine without a server, use "npm start".',
    );
  }
  await prepare();
  const { migrate } = await import('./start/own-database.mjs');
  const { startService } = await import('./start/service-process.mjs');
  await migrate(process.env.DATABASE_URL);
  const service = startService({ FLAGWAY_ROLES: role });
  let asked = false;
  for (const signal of ['SIGINT', 'SIGTERM', 'SIGHUP']) {
    process.on(signal, () => {
      asked = true;
      void service.stop();
    });
  }
  await service.ready;
  say(`The ${role} is ready. Stop it with Ctrl-C.`);
  const end = await service.ended;
  if (!asked) throw new Error(`The ${role} ended by itself (${end}); see what it said above.`);
});
process.exit(0);
