import type { NoticeKind } from '../notice-kind.js';
import { alarmNotice } from './cure-alarm-notice.js';

/** Sent in quiet hours too: a night decides whether the placement is lost. */
export const cureFreezing: NoticeKind = alarmNotice('cure-freezing', true, {
  subject: 'Concrete near freezing',
  opening: 'Go and see to its blankets and its heat now, and read its temperature again.',
});

/** Whatever else must be minded at a placement; it waits for the morning. */
export const cureAlarm: NoticeKind = alarmNotice('cure-alarm', false, {
  subject: 'Look at a placement',
  opening: 'Look at the placement and read its temperature again.',
});

/** That blankets and heat may go to the next job. */
export const protectionMayComeOff: NoticeKind = alarmNotice('protection-may-come-off', false, {
  subject: 'Protection may come off',
  opening: 'Record it when the protection is taken off: its equipment is free from then on.',
});
