/* What other features may use of placements and their cure. */
export { type MeasuredCourse, MeasuredCourses } from './measured-courses.js';
export { firstFreezeOf, measuredReleaseOf, measuredStrengthOf } from './measured-cure.js';
