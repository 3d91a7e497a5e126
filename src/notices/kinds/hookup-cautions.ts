const LICENSED =
  'Electrical work is for a licensed electrician under permit; the local code and the inspector decide.';
const DE_ENERGISE = 'De-energise, lock and verify before you touch the leads.';
const GROUND_FAULT =
  'Ground-fault protection of the equipment is required (NEC 426.28). It protects equipment and is not shock protection for people.';

/** Cautions of a hookup; the trade's common practice where no source is named. */
export const HOOKUP_CAUTIONS: readonly string[] = [
  LICENSED,
  DE_ENERGISE,
  GROUND_FAULT,
  "Never energise before the heating set's stated cure of the bed, neither to cure mortar nor to test the cable.",
  'The cold lead may be cut to length, the heating cable never.',
];

/** Cautions of energising. */
export const ENERGISING_CAUTIONS: readonly string[] = [LICENSED, DE_ENERGISE, GROUND_FAULT];
