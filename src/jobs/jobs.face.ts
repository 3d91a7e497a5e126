/** What other features may use of jobs. */
export { Area } from './area.model.js';
export { Clearance } from './clearances/clearance.model.js';
export { Job } from './job.model.js';
export { JobReader } from './job-reader.js';
export { Link } from './link.model.js';
export { Phase } from './phase.model.js';
export { PhaseReader } from './phase-reader.js';
export { Quantity } from './quantity.model.js';
export { Template } from './templates/template.model.js';
