/** What other features may use of crews and equipment. */
export { Crew } from './crew.model.js';
export { CrewReader } from './crew-reader.js';
export { EquipmentPool } from './equipment-pool.model.js';
export { EquipmentReader } from './equipment-reader.js';
export { DayHours } from './week.model.js';
export { DayHoursInput } from './week.inputs.js';
export { weekRows } from './week-rows.js';
export { weekHours } from './week-schema.js';
export { zoneName } from './zone-name.js';
