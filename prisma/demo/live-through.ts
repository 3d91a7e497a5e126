import type { Hands } from './hands.js';
import type { JobLife } from './job-life.js';

const HOUR = 3_600_000;

/**
 * Lets several jobs be worked side by side from one moment to another: the clock jumps from one due moment to the
 * next.
 *
 * @param started gives the jobs that exist at a moment; new ones are entered by it.
 * @param each called after each moment, for what the office does besides.
 */
export async function liveThrough(
  hands: Hands,
  span: { readonly from: Date; readonly to: Date },
  started: (now: Date) => Promise<readonly JobLife[]>,
  each: (now: Date) => Promise<void> = async () => undefined,
): Promise<void> {
  let now = span.from;
  while (now <= span.to) {
    hands.setClock(now);
    const lives = await started(now);
    let worked = false;
    for (const life of lives) worked = (await life.work(now)) || worked;
    await each(now);
    const nexts = await Promise.all(lives.map((life) => life.next(now)));
    const later = nexts.flatMap((next) => (next && next > now ? [next.getTime()] : []));
    const fallback = now.getTime() + 12 * HOUR;
    now = new Date(Math.min(fallback, ...later.map((at) => Math.max(at, now.getTime() + HOUR / 4))));
  }
  hands.setClock(span.to);
}
