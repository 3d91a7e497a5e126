import type { DesignedEntry } from '../entry/design/design-entry.js';
import { cablePlan, cablePlanSize } from './cable-plan.js';
import { entrySection, entrySectionSize } from './entry-section.js';
import { LETTER, scaleFor, type Paper } from './paper.js';
import { sectionFactsOf } from './section-facts.js';

/** A drawing that prints to scale. */
export interface EntryDrawing {
  /** `section`, or `cable-` with the key of the set. */
  readonly key: string;
  readonly title: string;
  readonly svg: string;
  /** Inches of the real thing to an inch of paper. */
  readonly scale: number;
  /** On paper, in. */
  readonly width: number;
  readonly height: number;
}

/**
 * The drawings of a designed entry, each at the largest scale of a drafting rule that the paper takes: the plan of every set
 * that was laid, or of what would fit in its place, and the section.
 */
export function entryDrawings(designed: DesignedEntry, paper: Paper = LETTER): EntryDrawing[] {
  const { sitePlan } = designed.measurement;
  const plans = designed.sets.flatMap(({ setKey, setName, layout, instead }) => {
    const shown = layout ?? instead?.layout;
    if (!sitePlan || !shown) return [];
    const scale = scaleFor((one) => cablePlanSize(sitePlan, one), paper);
    const [width, height] = cablePlanSize(sitePlan, scale);
    const title = layout
      ? `Cable plan of ${setName}`
      : `Cable plan with ${instead?.length} ft in place of ${setName}`;
    const svg = cablePlan(sitePlan, shown, scale);
    return [{ key: `cable-${setKey}`, title, svg, scale, width: width / scale, height: height / scale }];
  });
  const facts = sectionFactsOf(designed);
  if (!facts) return plans;
  const scale = scaleFor((one) => entrySectionSize(facts, one), paper);
  const [width, height] = entrySectionSize(facts, scale);
  const section = {
    key: 'section',
    title: 'Section through landing and steps',
    svg: entrySection(facts, scale),
    scale,
    width: width / scale,
    height: height / scale,
  };
  return [...plans, section];
}
