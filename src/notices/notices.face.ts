/* What other features may use of notices. */
export { Announcer } from './announcer.js';
export { DeliverySender } from './delivery-sender.js';
export { Mailer } from './mailer.js';
export type { Fact, Message } from './message.js';
export { type NoticeKind, type NoticeKindName } from './notice-kind.js';
export { NoticeKinds } from './notice-kinds.js';
export { foremenOf, peopleOf } from './recipients.js';
