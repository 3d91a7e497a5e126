import type { Finding } from '../../entry/rules/finding.js';
import type { Psi } from '../../units/stress.js';
import { ageMethodOf, methodWords } from '../mixture-strength.js';
import type { Mixture } from '../mixture.js';
import { STRENGTH_CAUTION } from '../placement.js';
import type { MeasuredStrength } from '../strength-estimate.js';

/**
 * A cure is released when its measured temperatures show the strength that is needed; without readings nothing is
 * measured, whatever is predicted. The source is that of the method by which temperatures become strength.
 *
 * @param measured null where no temperature was read.
 */
export function measuredRelease(
  measured: MeasuredStrength | null,
  { mixture, required }: { readonly mixture: Mixture; readonly required: Psi },
): Finding {
  const ok = measured?.reached ?? false;
  return {
    rule: 'measured-release',
    ok,
    measured: measured
      ? `${Math.floor(measured.strength)} psi by ${methodWords(mixture)}`
      : 'no temperature read',
    limit: `at least ${required} psi by measured temperatures`,
    source: ageMethodOf(mixture).source,
    text: ok
      ? 'Strong enough by its measured temperatures'
      : measured
        ? 'Not strong enough by its measured temperatures: keep it warm, read it again and wait'
        : 'Nothing is measured: read its temperatures; a prediction releases nothing',
    caution: STRENGTH_CAUTION,
  };
}
