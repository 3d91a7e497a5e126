import type { HoldPointItem, MeasuredValue as Value } from '../../shared/entry/hold-points/item.js';
import { judgeHoldPoint } from '../../shared/entry/hold-points/judge-hold-point.js';
import { sayLimit } from '../../shared/entry/hold-points/judge-item.js';
import { refuseInput } from '../platform/outcomes/demand-past.js';
import type { Finding } from './finding.model.js';
import { findingOf } from './finding-of.js';
import type { MeasuredValue } from './hold-point-item.model.js';
import type { MeasuredValueInput } from './measured-value.input.js';

/** What was measured at a hold point and what the limits say about it. */
export interface Judged {
  readonly ok: boolean;
  readonly measured: MeasuredValue[];
  readonly findings: Finding[];
}

/**
 * Holds measured values against the items of a hold point. A required item that was not measured is a finding that is
 * not kept, so the answer lists everything that is missing.
 *
 * @throws Refused with InvalidInput for a value of an item that is not there.
 */
export function judgeValues(items: readonly HoldPointItem[], given: readonly MeasuredValueInput[]): Judged {
  const values = new Map<string, Value>(given.map((value) => [value.itemId, plain(value)]));
  const unknown = given.find(({ itemId }) => !items.some(({ id }) => id === itemId));
  if (unknown) refuseInput('values', `This hold point has no item "${unknown.itemId}"; remove it.`);
  const judgement = judgeHoldPoint(items, Object.fromEntries(values));
  const missing = items.filter(({ id, required }) => required && !values.has(id)).map(missingItem);
  const findings = [...judgement.findings.map(findingOf), ...missing];
  const saidBy = new Map(findings.map(({ rule, measured }) => [rule, measured]));
  return {
    ok: judgement.ok,
    findings,
    measured: given.map((value) => ({
      itemId: value.itemId,
      value: value.value ?? null,
      values: value.values ?? null,
      confirmed: value.confirmed ?? null,
      text: saidBy.get(value.itemId) ?? '',
    })),
  };
}

function plain({ value, values, confirmed }: MeasuredValueInput): Value {
  return value ?? values ?? confirmed ?? false;
}

function missingItem(item: HoldPointItem): Finding {
  return {
    rule: item.id,
    ok: false,
    measured: 'not measured',
    limit: sayLimit(item.limit, item.unit ?? ''),
    mark: item.source.mark,
    source: item.source.text,
    caution: null,
    text: `${item.label}: not ${item.limit.confirmed ? 'confirmed' : 'measured'} yet.`,
  };
}
