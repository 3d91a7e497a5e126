/* What other features may use of the design of an entry. */
export { EntryDesigner } from './entry-designer.js';
