/* What other features may use of the design of an entry; none of these files imports another feature's. */
export { EntryDesigner } from './entry-designer.js';
export { findingsColumn, storedFindings, type StoredFinding, type StoredWaiver } from './stored-findings.js';
