import type { Finding } from '../../entry/rules/finding.js';
import { published } from '../../entry/source.js';

/** What trips the circuit on a leak to ground: equipment's at about 30 mA, people's at 5 mA, or nothing. */
export type GroundFaultDevice = 'equipment' | 'people' | 'none';

/** What protection is planned, and what the cable is. */
export interface GroundFaultFacts {
  readonly device: GroundFaultDevice;
  /** Mineral-insulated, metal-sheathed cable embedded in a medium that does not burn. */
  readonly mineralInsulatedInNoncombustible?: boolean;
  /** Whether the edition in force still has the exception for such cable. */
  readonly olderEdition?: boolean;
}

const SAYS: Record<GroundFaultDevice, string> = {
  equipment: 'protection of equipment, about 30 mA',
  people: 'protection of people, 5 mA',
  none: 'none',
};

/**
 * Fixed outdoor snow-melting has ground-fault protection of equipment, which is not the 5 mA that protects people. Older
 * editions leave out mineral-insulated cable embedded in a medium that does not burn.
 */
export function groundFault(facts: GroundFaultFacts): Finding {
  const excepted = facts.mineralInsulatedInNoncombustible === true && facts.olderEdition === true;
  const ok = facts.device === 'equipment' || excepted;
  return {
    rule: 'ground-fault',
    ok,
    measured: SAYS[facts.device],
    limit: SAYS.equipment,
    source: published('NEC 426.28'),
    text:
      facts.device === 'equipment'
        ? 'Equipment is protected'
        : excepted
          ? 'The edition in force excepts mineral-insulated cable in a medium that does not burn'
          : facts.device === 'people'
            ? 'A device of 5 mA protects people and is not what is asked here: plan ground-fault protection of equipment'
            : 'Plan ground-fault protection of equipment',
    caution: 'It protects equipment and is not shock protection for people.',
  };
}
