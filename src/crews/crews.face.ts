/** What other features may use of crews and equipment. */
export { Crew } from './crew.model.js';
export { EquipmentPool } from './equipment-pool.model.js';
export { CrewException, DayHours, HourRange } from './week.model.js';
