import { ENERGISING_CAUTION } from '../../shared/heating/energising-needs.js';
import { CAUTIONS } from '../../shared/entry/template/default/cautions.js';

/** What an electrician must mind at every hookup. */
export const HOOKUP_CAUTIONS: readonly string[] = [CAUTIONS.electrical, ENERGISING_CAUTION, CAUTIONS.code];
