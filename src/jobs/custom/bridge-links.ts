import type { Link, LinkKind } from '../../generated/prisma/client.js';

/** A link to be made. */
export interface Bridge {
  readonly fromId: string;
  readonly toId: string;
  readonly kind: LinkKind;
  readonly lagMinutes: number;
  readonly lagIn: 'working' | 'elapsed';
}

const leaves: Record<LinkKind, 'finish' | 'start'> = {
  finishStart: 'finish',
  finishFinish: 'finish',
  startStart: 'start',
  startFinish: 'start',
};

/** Which end a link holds back. */
const holds: Record<LinkKind, 'Start' | 'Finish'> = {
  finishStart: 'Start',
  startStart: 'Start',
  finishFinish: 'Finish',
  startFinish: 'Finish',
};

/**
 * The links that keep the order when a phase between goes away: whatever waited for it now waits for what it waited
 * for, with both lags. A lag in working time on either side keeps the whole in working time.
 */
export function bridgeLinks(into: readonly Link[], outOf: readonly Link[]): Bridge[] {
  return into.flatMap((one) =>
    outOf.map((other) => ({
      fromId: one.fromId,
      toId: other.toId,
      kind: `${leaves[one.kind]}${holds[other.kind]}` as LinkKind,
      lagMinutes: one.lagMinutes + other.lagMinutes,
      lagIn:
        one.lagIn === 'working' || other.lagIn === 'working' ? ('working' as const) : ('elapsed' as const),
    })),
  );
}
