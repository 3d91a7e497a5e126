import type { Predecessor } from '../facts/phase-facts.js';

const MINUTE_MS = 60_000;

/** How a link binds the gate it is about. */
export interface LinkBound {
  /** Whether the predecessor is far enough. */
  readonly met: boolean;
  /** What it must do: "finish" or "start". */
  readonly must: 'finish' | 'start';
  /** From when on the gate may be passed; null while that is not known. */
  readonly from: Date | null;
}

/**
 * What a predecessor asks of its successor's start (finish-start, start-start) or finish (finish-finish,
 * start-finish). A dropped predecessor asks nothing. A finish-start link with a negative lag lets the successor start
 * before the finish, which nobody knows yet, so the predecessor must have started. A lag in working time lasts at
 * least as long by the clock, so the clock is a safe lower bound here; the plan counts it in full.
 */
export function linkBound({ link, phase }: Predecessor): LinkBound {
  const must = link.kind === 'finishStart' || link.kind === 'finishFinish' ? 'finish' : 'start';
  if (phase.state === 'dropped') return { met: true, must, from: null };
  if (must === 'finish' && link.lagMinutes < 0 && phase.state !== 'done')
    return { met: phase.state === 'started', must: 'start', from: phase.actualStart };
  const since = must === 'finish' ? phase.actualFinish : phase.actualStart;
  const met = must === 'finish' ? phase.state === 'done' : phase.state !== 'waiting';
  return { met, must, from: since && new Date(since.getTime() + link.lagMinutes * MINUTE_MS) };
}

/** Whether the link is about the start of the successor; otherwise it is about its finish. */
export function bindsStart({ link }: Predecessor): boolean {
  return link.kind === 'finishStart' || link.kind === 'startStart';
}
