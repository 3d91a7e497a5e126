import type { Inches } from '../../units/length.js';
import { leastCover, type CoverFace } from '../footing/rebar.js';
import { published } from '../source.js';
import type { Finding } from './finding.js';
import { say } from './say.js';
import { HAIR } from './spread.js';

/** Bars are covered by 3 in where concrete is cast against earth; by 1½ in up to #5 and 2 in from #6 in the weather. */
export function rebarCover(cover: Inches, bar: number, face: CoverFace): Finding {
  const limit = leastCover(bar, face);
  const ok = cover >= limit - HAIR;
  return {
    rule: 'rebar-cover',
    ok,
    measured: say(cover, 'in'),
    limit: `at least ${say(limit, 'in')}`,
    source: published('ACI 318, cover of bars cast in place'),
    text: ok ? 'Bars are covered enough' : 'Bars lie too near the face: chair them up or move them in',
    caution: 'Cap bars that stand up: a fall on one kills.',
  };
}
