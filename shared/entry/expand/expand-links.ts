import { daysToMinutes } from '../../units/time.js';
import type { DraftLink } from '../template/draft.js';
import type { Pairing, TemplateLink } from '../template/template.js';
import { areaFits } from './area-fits.js';
import { turnOf, type ExpandedPhase } from './expanded-phase.js';

/**
 * The links between the phases there are. Two links of one kind between the same two phases become one with the
 * longer lag: the longer wait covers the shorter.
 */
export function expandLinks(links: readonly TemplateLink[], phases: readonly ExpandedPhase[]): DraftLink[] {
  const found = new Map<string, DraftLink>();
  for (const link of links) {
    for (const from of phases.filter((phase) => phase.of.kind === link.from && fits(phase, link))) {
      for (const to of phases.filter((phase) => phase.of.kind === link.to && fits(phase, link))) {
        if (from.key === to.key || !pairs(link.pairing, from, to)) continue;
        const draft = draftLink(link, from, to);
        const key = [draft.from, draft.to, draft.kind].join(' ');
        const before = found.get(key);
        if (!before || before.lagMinutes < draft.lagMinutes) found.set(key, draft);
      }
    }
  }
  return [...found.values()];
}

const fits = (phase: ExpandedPhase, link: TemplateLink): boolean =>
  phase.area === null || areaFits(phase.area, link.where);

/** Whether a link with this pairing joins the two. */
function pairs(pairing: Pairing, from: ExpandedPhase, to: ExpandedPhase): boolean {
  switch (pairing) {
    case 'every':
      return true;
    case 'sameArea':
      return from.area !== null && from.area.key === to.area?.key;
    case 'sameSet':
      return sameSet(from, to);
    case 'nextInSet':
      return sameSet(from, to) && turnOf(from) >= 0 && turnOf(to) === turnOf(from) + 1;
    case 'firstOfSet':
      return jobOrSameSet(from, to) && isEnd(from, 'first') && isEnd(to, 'first');
    case 'lastOfSet':
      return jobOrSameSet(from, to) && isEnd(from, 'last') && isEnd(to, 'last');
  }
}

const sameSet = (from: ExpandedPhase, to: ExpandedPhase): boolean =>
  from.set !== null && from.set.key === to.set?.key;

/** A phase of the whole job serves every set. */
const jobOrSameSet = (from: ExpandedPhase, to: ExpandedPhase): boolean =>
  from.of.scope === 'job' || to.of.scope === 'job' || sameSet(from, to);

/** A phase of an area must be the first or last its set runs through; others have no place in the turn. */
function isEnd(phase: ExpandedPhase, end: 'first' | 'last'): boolean {
  if (phase.area === null) return true;
  if (phase.set === null) return false;
  return turnOf(phase) === (end === 'first' ? 0 : phase.set.areas.length - 1);
}

function draftLink(link: TemplateLink, from: ExpandedPhase, to: ExpandedPhase): DraftLink {
  const cure = (from.set ?? to.set)?.cureDays;
  const lag = link.lag === 'setCureDays' ? (cure === undefined ? 0 : daysToMinutes(cure)) : link.lag;
  return { from: from.key, to: to.key, kind: link.kind, lagMinutes: lag, lagIn: link.lagIn };
}
