/* What other features may use of signed links. */
export { pagePath } from './link-address.js';
export { LinkSessions } from './link-sessions.js';
export { type MailedLink, MailedLinks } from './mailed-links.js';
export { SheetHead } from './sheet-head.model.js';
export { demandLink, SheetHeads } from './sheet-heads.js';
