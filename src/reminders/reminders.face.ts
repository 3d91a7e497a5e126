/* What other features may use of reminders. */
export { ReminderFirer } from './reminder-firer.js';
