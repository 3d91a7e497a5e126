import { mayWaive } from '../../../shared/entry/rules/may-waive.js';
import { describeSource } from '../../../shared/entry/source.js';
import type { StoredFinding } from '../../design/design.face.js';
import { findingOf } from '../../inspections/inspections.face.js';
import { DesignBroken } from '../errors/design-broken.js';
import type { PhaseFacts } from '../facts/phase-facts.js';
import { messagesOf, type ObstacleCheck } from './obstacle.js';

/** No phase starts against a rule of the design that keeps it from beginning, unless the office waived it by reason. */
export const designBroken: ObstacleCheck = {
  find: (facts, { gate }) =>
    gate === 'start'
      ? broken(facts).map((finding) => ({
          code: 'DesignBroken',
          message: `${finding.text}. Measured ${finding.measured}, limit ${finding.limit}, by ${describeSource(finding.source)}. ${wayOut(finding)}`,
          liftedBy: 'office' as const,
        }))
      : [],
  refuse: (found, facts) => new DesignBroken(broken(facts).map(findingOf), messagesOf(found)),
};

const broken = ({ designFindings, phase, areaKey }: PhaseFacts): StoredFinding[] =>
  designFindings.filter(
    ({ ok, blocks = [], areas, waived }) =>
      !ok &&
      waived === undefined &&
      blocks.includes(phase.kind) &&
      (areas === undefined || areaKey === null || areas.includes(areaKey)),
  );

const wayOut = (finding: StoredFinding): string =>
  mayWaive(finding)
    ? 'Correct the measurement, or have the office waive it with a reason.'
    : 'Correct the measurement; nobody waives this rule.';
