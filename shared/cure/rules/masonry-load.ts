import type { Finding } from '../../entry/rules/finding.js';
import { published } from '../../entry/source.js';
import type { Hours } from '../../units/time.js';
import { STRENGTH_CAUTION } from '../placement.js';

const WAIT = { uniform: 12, concentrated: 72 } as const;

/** Masonry is left without uniform load for 12 h, without concentrated load for 72 h. */
export function masonryLoad(kind: 'uniform' | 'concentrated', since: Hours): Finding {
  const ok = since >= WAIT[kind];
  return {
    rule: 'masonry-load',
    ok,
    measured: `${since} h since it was laid`,
    limit: `${kind} load after ${WAIT[kind]} h`,
    source: published('UFGS 04 20 00'),
    text: ok ? `May take a ${kind} load` : `No ${kind} load for ${WAIT[kind] - since} h more`,
    caution: STRENGTH_CAUTION,
  };
}
