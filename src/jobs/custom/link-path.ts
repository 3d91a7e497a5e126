/** A link as far as its direction matters. */
export interface Arrow {
  readonly fromId: string;
  readonly toId: string;
}

/**
 * The shortest way along links from one phase to another, both included; null when there is none. A link from `to`
 * back to `from` would close exactly this way to a circle.
 */
export function linkPath(links: readonly Arrow[], from: string, to: string): string[] | null {
  const next = new Map<string, string[]>();
  for (const { fromId, toId } of links) next.set(fromId, [...(next.get(fromId) ?? []), toId]);
  const cameFrom = new Map<string, string | null>([[from, null]]);
  const waiting = [from];
  for (let at = waiting.shift(); at !== undefined; at = waiting.shift()) {
    if (at === to) return wayTo(at, cameFrom);
    for (const following of next.get(at) ?? []) {
      if (cameFrom.has(following)) continue;
      cameFrom.set(following, at);
      waiting.push(following);
    }
  }
  return null;
}

function wayTo(end: string, cameFrom: ReadonlyMap<string, string | null>): string[] {
  const way: string[] = [];
  for (let at: string | null | undefined = end; at; at = cameFrom.get(at)) way.unshift(at);
  return way;
}
