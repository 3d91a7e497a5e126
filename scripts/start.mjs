import { prepare, say } from './house/prepare.mjs';
import { tell } from './house/tell.mjs';
import { takePlace } from './start/take-place.mjs';

/*
 * npm start: everything between a fresh clone and a served board. Before packages are installed only Node's own parts
 * may be imported, so what needs a package is imported after the preparations.
 */

await tell(async () => {
  const { lock, running } = await takePlace();
  if (running) {
    const where = running.address ? `runs at ${running.address}` : 'is being started';
    say(
      `Flagway ${where} already (process ${running.pid}). Stop that one with Ctrl-C or "kill ${running.pid}" first.`,
    );
    return;
  }
  try {
    await prepare();
    const { serve } = await import('./start/serve.mjs');
    await serve(lock);
  } finally {
    lock.release();
  }
});
process.exit(0);
