/** What other features may use of jobs. */
export { Area } from './area.model.js';
export { Clearance } from './clearances/clearance.model.js';
export { Job } from './job.model.js';
export { JobReader } from './job-reader.js';
export { Phase } from './phase.model.js';
export { PhaseReader } from './phase-reader.js';
