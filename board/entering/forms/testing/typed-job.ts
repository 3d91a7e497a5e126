import type { Values } from '../field.js';
import { NEW_JOB } from '../job-fields.js';

/** An invented job as the office types it: landing, three risers and a walk, heated by one set of 12 W per foot. */
export const typedJob = (change: Values = {}): Values => ({
  ...NEW_JOB,
  jobName: 'Larch Street',
  owner: 'R. Alder',
  landingOut: '60',
  landingWide: '96',
  landingHigh: '21',
  risers: '3',
  riser: '7',
  stepsWide: '96',
  walkLong: '18',
  footingLong: '28',
  footingBottom: '44',
  watts: '4560',
  ohms: '12.63',
  heatedLong: '380',
  leadLong: '16',
  leadRun: '12',
  ...change,
});
