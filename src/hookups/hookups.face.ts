/* What other features may use of hookups. */
export { HookupSheet } from './sheet/hookup-sheet.model.js';
export { NeedsMissing } from './errors/needs-missing.js';
