/* What other features may use of hookups. */
export { NeedsMissing } from './errors/needs-missing.js';
