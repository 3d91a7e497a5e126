/** Cautions shown where work can hurt someone; each defers to those who decide. */
export const CAUTIONS = {
  dig: 'Mark-out before digging. Protection from 5 ft, less where a competent person sees cause; ladder from 4 ft; spoil 2 ft back; inspect daily (29 CFR 1926.651–652). Local rules decide.',
  services:
    'Gas, water and electricity found and made safe by those licensed for them before anything is torn out.',
  heater:
    'Unvented heaters make carbon monoxide and a soft, carbonated surface: fresh air, 10 ft from tarpaulins (29 CFR 1926.154; OSHA 50 ppm over 8 h, NIOSH 35 ppm, ceiling 200).',
  strength:
    'A strength figure is an estimate from temperature; loads that can hurt someone wait for the engineer or the authority.',
  cutting: 'Cut block and stone wet or with the dust captured; respirator by Table 1 of 29 CFR 1926.1153.',
  chloride: 'Calcium chloride is not for masonry mortar or near embedded metal.',
  coiled: 'Never energise the cable to test it coiled or to cure mortar.',
  electrical:
    'Electrical work by a licensed electrician under permit; de-energise, lock, verify. Ground-fault protection of equipment is required and is not shock protection for people.',
  energise:
    "Energise only after the set's stated cure and the passed final inspection. Never to cure mortar.",
  code: 'Codes differ by place and edition; the authority having jurisdiction decides.',
} as const;
