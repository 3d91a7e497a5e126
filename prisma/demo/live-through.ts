import type { Hands } from './hands.js';
import type { JobLife } from './job-life.js';

const HOUR = 3_600_000;

/**
 * Lets several jobs be worked side by side from one moment to another: the clock jumps from one due moment to the
 * next, and each job is looked at when it is due and every morning.
 *
 * @param started gives the jobs that exist at a moment; new ones are entered by it.
 * @param each called every morning, for what the office does besides.
 * @param work works one job at one moment.
 */
export async function liveThrough(
  hands: Hands,
  span: { readonly from: Date; readonly to: Date },
  started: (now: Date) => Promise<readonly JobLife[]>,
  each: (now: Date) => Promise<void> = () => Promise.resolve(),
  work: (life: JobLife, now: Date) => Promise<unknown> = (life, now) => life.work(now),
): Promise<void> {
  let looked = '';
  for (let now = span.from; now <= span.to;) {
    hands.setClock(now);
    const lives = await started(now);
    const morning = now.toISOString().slice(0, 10) !== looked;
    looked = now.toISOString().slice(0, 10);
    for (const life of lives) if (morning || (life.due && life.due <= now)) await work(life, now);
    if (morning) await each(now);
    const due = lives.flatMap((life) => (life.due && life.due > now ? [life.due.getTime()] : []));
    now = new Date(
      Math.min(now.getTime() + 12 * HOUR, ...due.map((at) => Math.max(at, now.getTime() + HOUR / 4))),
    );
  }
  hands.setClock(span.to);
}
