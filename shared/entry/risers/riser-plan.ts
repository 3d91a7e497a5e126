import { inches, type Inches } from '../../units/length.js';
import { doorDrop } from '../rules/door-drop.js';
import type { Finding } from '../rules/finding.js';
import { guard } from '../rules/guard.js';
import { handrail } from '../rules/handrail.js';
import { HIGHEST_RISER, riserHeight } from '../rules/riser-height.js';
import { riserSpread } from '../rules/riser-spread.js';
import type { Amendment } from '../rules/amendment.js';
import { blockCourses, type BlockCourses } from './block-courses.js';
import { equalRisers } from './riser-count.js';

/** Heights of an entry and what lies over its block. Heights are taken from one mark, upwards. */
export interface RiserFacts {
  /** Top of the sill. */
  readonly sill: Inches;
  /** How far the finished landing lies under the sill. */
  readonly doorDrop: Inches;
  /** Whether a door swings over the landing. */
  readonly doorSwingsOver: boolean;
  /** Finished top of the lower walk at the first riser. */
  readonly walk: Inches;
  /** Top of the footing. */
  readonly footingTop: Inches;
  /** Everything over the block: bed, with the cable in it, and stone. */
  readonly treadBuildUp: Inches;
  /** Everything over the walk's base. */
  readonly walkBuildUp: Inches;
  /** Risers to be built; the fewest that the limit allows, where none is given. */
  readonly count?: number;
  readonly handrailPlanned: boolean;
  readonly guardPlanned: boolean;
  readonly riserAmendment?: Amendment;
  readonly doorAmendment?: Amendment;
}

/** One step, from the walk upwards; the last is the landing. */
export interface PlannedStep {
  readonly finished: Inches;
  /** Finished riser up to it. */
  readonly riser: Inches;
  readonly blockTop: Inches;
  /** What the block rises from the step below, or from the walk's base. */
  readonly blockRiser: Inches;
  readonly courses: BlockCourses;
}

/** Heights that make every finished riser equal, and what the rules say about them. */
export interface RiserPlan {
  readonly rise: Inches;
  readonly count: number;
  readonly riser: Inches;
  readonly steps: readonly PlannedStep[];
  readonly findings: readonly Finding[];
  /** What to do where it does not fit; empty where it does. */
  readonly advice: readonly string[];
}

/**
 * Works down from the sill: the finished landing, equal finished risers to the walk, block tops under bed and stone. The
 * first block riser differs from the others by the difference between the tread's layers and the walk's.
 */
export function planRisers(facts: RiserFacts): RiserPlan {
  const landing = facts.sill - facts.doorDrop;
  const rise = inches(landing - facts.walk);
  const highest = facts.riserAmendment?.limit ?? HIGHEST_RISER;
  const fewest = equalRisers(rise, highest);
  const count = facts.count ?? fewest.count;
  if (!Number.isInteger(count) || count < 0 || (count === 0 && rise > 0))
    throw new RangeError(`the risers must be a whole number, 1 or more over ${rise} in, got ${count}`);
  const riser = inches(count === 0 ? 0 : rise / count);
  const steps = Array.from({ length: count }, (_, i) => plannedStep(facts, riser, i));
  return {
    rise,
    count,
    riser,
    steps,
    findings: findingsOf(facts, rise, riser, steps),
    advice: riser > highest + 1e-9 ? [adviceOn(rise, count, highest, fewest.count)] : [],
  };
}

function plannedStep(facts: RiserFacts, riser: Inches, i: number): PlannedStep {
  const { walk, treadBuildUp, walkBuildUp, footingTop } = facts;
  const finished = walk + (i + 1) * riser;
  const under = i === 0 ? walk - walkBuildUp : walk + i * riser - treadBuildUp;
  const blockTop = inches(finished - treadBuildUp);
  return {
    finished: inches(finished),
    riser,
    blockTop,
    blockRiser: inches(blockTop - under),
    courses: blockCourses(inches(blockTop - footingTop)),
  };
}

function findingsOf(
  facts: RiserFacts,
  rise: Inches,
  riser: Inches,
  steps: readonly PlannedStep[],
): Finding[] {
  const door = doorDrop(facts.doorDrop, facts.doorSwingsOver, facts.doorAmendment);
  if (steps.length === 0) return [door];
  return [
    door,
    riserHeight(riser, facts.riserAmendment),
    riserSpread(steps.map((step) => step.riser)),
    handrail(steps.length, facts.handrailPlanned),
    guard(rise, facts.guardPlanned),
  ];
}

function adviceOn(rise: Inches, count: number, highest: Inches, fewest: number): string {
  const over = Math.round((rise - count * highest) * 1000) / 1000;
  return `${count} risers reach ${count * highest} in at most: build ${fewest}, or bring the landing down by ${over} in or the walk up by as much`;
}
