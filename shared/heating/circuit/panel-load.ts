import type { Finding } from '../../entry/rules/finding.js';
import { say } from '../../entry/rules/say.js';
import { HAIR } from '../../entry/rules/spread.js';
import { fromMemory } from '../../entry/source.js';
import { amperes, type Amperes } from '../../units/electrical.js';
import { continuousLoad } from './size-circuit.js';

/** The panel that the heating is to hang on. */
export interface Panel {
  readonly main: Amperes;
  /** Load that it carries already, as the electrician has worked it out. */
  readonly carried: Amperes;
}

/** Whether a panel takes the heating on top of what it carries: all zones at once, as a continuous load. */
export function panelLoad(panel: Panel, heating: Amperes): Finding {
  const added = continuousLoad(heating);
  const total = amperes(panel.carried + added);
  const ok = total <= panel.main + HAIR;
  return {
    rule: 'panel-load',
    ok,
    measured: `${say(total, 'A')}: ${say(panel.carried, 'A')} carried and ${say(added, 'A')} for heating`,
    limit: `at most ${say(panel.main, 'A')}`,
    source: fromMemory('NEC 220.51 and 426.4'),
    text: ok
      ? 'The panel takes the heating'
      : `The panel is ${say(total - panel.main, 'A')} short: run the zones in turn, heat less, or have the service enlarged`,
    caution: 'A licensed electrician works out the load of the service.',
  };
}
