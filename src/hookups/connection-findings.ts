import { breakerCarries, continuousLoad } from '../../shared/heating/circuit/size-circuit.js';
import { amperes } from '../../shared/units/electrical.js';
import type { HeatingSet } from '../generated/prisma/client.js';
import type { Finding } from '../inspections/inspections.face.js';

/** What is told about a connection that was made. */
export interface Connection {
  readonly breakerAmperes: number;
  readonly disconnect: boolean;
  readonly groundFault: boolean;
}

/** A connection against what it must have: a breaker for the continuous load, a disconnect, ground-fault protection. */
export function connectionFindings(set: HeatingSet, made: Connection): Finding[] {
  const load = amperes(set.watts / set.volts);
  const design = continuousLoad(load);
  const carries = breakerCarries(load, amperes(made.breakerAmperes));
  return [
    {
      rule: 'breaker',
      ok: carries,
      measured: `${made.breakerAmperes} A`,
      limit: `at least ${design.toFixed(1)} A, 125 % of ${load.toFixed(1)} A`,
      mark: 'P',
      source: 'NEC 426.4',
      caution: 'A licensed electrician sizes the circuit under permit.',
      text: carries
        ? 'The breaker carries the continuous load.'
        : `A ${made.breakerAmperes} A breaker is too small for a continuous load of ${load.toFixed(1)} A.`,
    },
    confirmed('disconnect', made.disconnect, 'Disconnect in place', 'M', 'NEC 426.50'),
    confirmed('ground-fault', made.groundFault, 'Ground-fault protection of equipment', 'P', 'NEC 426.28'),
  ];
}

function confirmed(rule: string, ok: boolean, what: string, mark: string, source: string): Finding {
  return {
    rule,
    ok,
    measured: ok ? 'yes' : 'no',
    limit: 'confirmed',
    mark,
    source,
    caution: rule === 'ground-fault' ? 'It protects equipment and is not shock protection for people.' : null,
    text: ok
      ? `${what}: confirmed.`
      : `${what} is not confirmed; it is required before the hookup is recorded.`,
  };
}
