import type { EntryMeasurement } from '../../../shared/entry/measurement/measurement.js';
import type { Finding } from '../../../shared/entry/rules/finding.js';
import { describeSource } from '../../../shared/entry/source.js';
import type { InputFault } from '../../platform/outcomes/invalid-input.js';
import { measuredPlace } from './measured-place.js';

/**
 * The findings that keep a design from being entered: those against a published text, or one remembered and to be
 * verified, that some phase has to wait for, each at the place of the sheet that broke its rule. Advice and what is only
 * against common practice stay findings of the job, for the office to judge.
 */
export function designFaults(findings: readonly Finding[], measurement: EntryMeasurement): InputFault[] {
  return findings
    .filter(
      ({ ok, source, blocks = [] }) =>
        !ok && blocks.length > 0 && (source.mark === 'P' || source.mark === 'M'),
    )
    .map(({ rule, text, measured, limit, source }) => ({
      path: ['measurement', measuredPlace(rule, measurement)].filter(Boolean).join('.'),
      message: `${text} Measured ${measured}, limit ${limit}, by ${describeSource(source)}; local code and the authority decide.`,
    }));
}
