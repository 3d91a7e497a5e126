import { EquipmentOut } from '../errors/equipment-out.js';
import type { EquipmentFacts } from '../facts/phase-facts.js';
import { messagesOf, type ObstacleCheck } from './obstacle.js';

/** Blankets, enclosures and heaters that are on one placement cannot be on another. */
export const equipmentOut: ObstacleCheck = {
  find: ({ equipment }, { gate }) =>
    gate === 'start'
      ? equipment.filter(isShort).map((facts) => ({
          code: 'EquipmentOut',
          message: say(facts),
          liftedBy: 'office',
          poolId: facts.poolId,
          ...(facts.out[0] && { phaseId: facts.out[0].phase.id }),
        }))
      : [],
  refuse: (found) => {
    const [first] = found;
    if (!first?.poolId) throw new Error('Equipment that is out belongs to a pool');
    return new EquipmentOut(first.poolId, first.phaseId ?? null, messagesOf(found));
  },
};

const free = ({ owned, out }: EquipmentFacts): number =>
  owned - out.reduce((sum, { quantity }) => sum + quantity, 0);

const isShort = (facts: EquipmentFacts): boolean => free(facts) < facts.needed;

function say(facts: EquipmentFacts): string {
  const { poolName, needed, owned, out } = facts;
  const at = out.map(({ phase, quantity }) => `${quantity} at ${phase.name}`).join(', ');
  const rest = at ? `${Math.max(0, free(facts))} free of ${owned} (${at})` : `the company owns ${owned}`;
  return `${poolName}: ${needed} needed, ${rest}. Free it by finishing what it is held for, or enter more stock.`;
}
