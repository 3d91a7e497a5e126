/* What other features may use of hookups. */
export { Circuit } from './circuit.model.js';
export { Hookup, HookupConnection } from './hookup.model.js';
export { Need } from './need.model.js';
export { NeedsMissing } from './errors/needs-missing.js';
