import type { Extent } from './layout/lanes.js';
import { MEASURES } from './layout/measures.js';

interface CommittedRuleProps {
  readonly rule: Extent;
  readonly bar: Extent;
}

/** The rule of committed dates under a bar, with a dotted lead to the bar where the two stand apart. */
export function CommittedRule({ rule, bar }: CommittedRuleProps) {
  const top = MEASURES.gateBand + MEASURES.barHeight;
  const apart =
    rule.right < bar.left
      ? { left: rule.right, right: bar.left }
      : rule.left > bar.right
        ? { left: bar.right, right: rule.left }
        : null;
  return (
    <>
      {apart && (
        <span
          className="bar-rule-lead"
          style={{ left: apart.left - bar.left, width: apart.right - apart.left, top }}
        />
      )}
      <span className="bar-rule" style={{ left: rule.left - bar.left, width: rule.right - rule.left, top }} />
    </>
  );
}
