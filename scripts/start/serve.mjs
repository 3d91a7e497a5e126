import { say } from '../house/prepare.mjs';
import { startOf } from '../house/lock.mjs';
import { choosePort } from './choose-port.mjs';
import { npmParent, whenNpmDies } from './npm-parent.mjs';
import { migrate, ownDatabase } from './own-database.mjs';
import { startService } from './service-process.mjs';

/** Runs the service until it is told to stop or ends by itself. */
export async function serve(lock) {
  const npm = npmParent();
  lock.tell({ npm });
  const stops = [];
  let stopping;
  const stop = (why) => {
    stopping ??= (async () => {
      say(`\nStopping (${why}) ...`);
      for (const step of stops.reverse()) await step();
      lock.release();
    })();
    return stopping;
  };
  const leave = (why) => void stop(why).then(() => process.exit(0));
  for (const signal of ['SIGINT', 'SIGTERM', 'SIGHUP']) process.on(signal, () => leave(signal));
  whenNpmDies(npm, () => leave('npm is gone'));

  try {
    const given = process.env.DATABASE_URL;
    if (given) await migrate(given);
    else say('Starting the database ...');
    const own = given ? undefined : await ownDatabase((how) => stops.push(how), leave);
    if (own?.adopted) say('Took over the database that an earlier start had left running.');

    const port = await choosePort(process.env);
    const service = startService({
      DATABASE_URL: given ?? own.url,
      FLAGWAY_PORT: String(port),
      FLAGWAY_ROLES: process.env.FLAGWAY_ROLES ?? 'api,worker',
    });
    stops.push(() => service.stop());
    lock.tell({ npm, port, service: { pid: service.pid, start: startOf(service.pid) } });
    await service.ready;
    const address = process.env.FLAGWAY_ORIGIN ?? `http://localhost:${port}`;
    lock.tell({ npm, port, address, service: { pid: service.pid, start: startOf(service.pid) } });
    say(`\nFlagway is ready at ${address}\n${own ? `Data: ${own.folder}\n` : ''}Stop it with Ctrl-C.\n`);

    const end = await service.ended;
    if (stopping) return await stopping;
    throw new Error(
      `The service ended by itself (${end}). Nothing is lost; start it again with "npm start".`,
    );
  } catch (error) {
    if (stopping) return await stopping;
    await stop('a fault');
    throw error;
  }
}
