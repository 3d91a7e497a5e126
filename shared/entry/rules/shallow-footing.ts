import { published } from '../source.js';
import type { Finding } from './finding.js';

/** A frost-protected shallow footing is for heated buildings; an unheated entry cannot use one. */
export function shallowFooting(shallowProtected: boolean): Finding {
  return {
    rule: 'shallow-footing',
    ok: !shallowProtected,
    measured: shallowProtected ? 'shallow frost-protected footing' : 'footing to frost depth',
    limit: 'none under an unheated entry',
    source: published('IRC R403.3'),
    text: shallowProtected
      ? 'An entry is no heated building, whatever cable lies in it: take the footing down to frost depth'
      : 'Footing is not a shallow one',
    caution: 'The authority having jurisdiction decides.',
  };
}
