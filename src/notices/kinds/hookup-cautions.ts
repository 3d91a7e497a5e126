import { CAUTIONS } from '../../../shared/entry/template/default/cautions.js';

/** Cautions of a hookup; the trade's common practice where no source is named. */
export const HOOKUP_CAUTIONS: readonly string[] = [
  CAUTIONS.electrical,
  CAUTIONS.energise,
  'The cold lead may be cut to length, the heating cable never.',
  CAUTIONS.code,
];

/** Cautions of energising. */
export const ENERGISING_CAUTIONS: readonly string[] = [CAUTIONS.electrical, CAUTIONS.code];
