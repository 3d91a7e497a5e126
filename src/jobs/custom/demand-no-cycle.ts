import type { Change } from '../../platform/change/change.js';
import { Refused } from '../../platform/outcomes/refusal.js';
import { LinkCycle } from './link-cycle.js';
import { linkPath } from './link-path.js';

/**
 * Refuses links after which phases would wait for each other, over whatever kind of links.
 *
 * @param befores ids that the new links lead from, @param afters ids that they lead to, @param through the new phase between, if any.
 * @throws Refused with LinkCycle naming the phases.
 */
export async function demandNoCycle(
  { tx }: Change,
  jobId: string,
  befores: readonly string[],
  afters: readonly string[],
  through: { readonly id: string; readonly name: string } | null = null,
): Promise<void> {
  const links = await tx.link.findMany({
    where: { jobId },
    select: { fromId: true, toId: true },
    orderBy: { id: 'asc' },
  });
  for (const after of afters) {
    for (const before of befores) {
      const way = linkPath(links, after, before);
      if (!way) continue;
      const rows = await tx.phase.findMany({ where: { id: { in: way } }, select: { id: true, name: true } });
      const named = new Map(rows.map((row) => [row.id, row]));
      const circle = way.flatMap((id) => named.get(id) ?? []);
      throw new Refused(new LinkCycle(through ? [...circle, through] : circle));
    }
  }
}
