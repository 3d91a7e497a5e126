import { describeSource } from '../../../shared/entry/source.js';
import type { Message } from '../message.js';
import type { NoticeKind, NoticeKindName } from '../notice-kind.js';
import { foremenOf, peopleOf } from '../recipients.js';
import { type AlarmFacts, foundBy, standingAlarm } from './cure-alarm-facts.js';

interface Wording {
  readonly subject: string;
  readonly opening: string;
}

/** A kind of notice about one alarm: office and the foremen of the crew that placed it hear once, while it stands. */
export function alarmNotice(
  kind: NoticeKindName,
  urgent: boolean,
  { subject, opening }: Wording,
): NoticeKind {
  return {
    kind,
    urgent,

    announce: async (tx, { companyId, ids }) => {
      const alarm = await standingAlarm(tx, companyId, ids['alarmId']);
      if (!alarm) return null;
      const { phase } = alarm.placement;
      return {
        sourceKey: `${kind} ${alarm.id}`,
        jobId: alarm.jobId,
        subjectType: 'cureAlarm',
        subjectId: alarm.id,
        recipientIds: [
          ...new Set([
            ...(await peopleOf(tx, companyId, 'office')),
            ...(await foremenOf(tx, companyId, phase.actualCrewId)),
          ]),
        ],
        usefulUntil: null,
        message: messageOf(alarm, subject, opening),
      };
    },

    overtaken: async (tx, { notice }) =>
      (await standingAlarm(tx, notice.companyId, notice.subjectId))
        ? null
        : 'not sent: what was found holds no longer',
  };
}

function messageOf(alarm: AlarmFacts, subject: string, opening: string): Message {
  const { job, phase, placedAt } = alarm.placement;
  const { measured, limit, mark, source, text, caution } = foundBy(alarm);
  const name = phase.area ? `${phase.name} (${phase.area.name})` : phase.name;
  return {
    subject: `${subject}: ${name}, job ${job.number}, ${job.name}`,
    opening: `${text} ${opening}`,
    facts: [
      { label: 'Job', value: `${job.number}, ${job.name}` },
      { label: 'Address', value: `${job.site.address}, ${job.site.town}` },
      { label: 'Placement', value: name },
      { label: 'Placed', value: { at: placedAt.toISOString() } },
      { label: 'Found', value: measured },
      { label: 'Limit', value: limit },
      { label: 'Source', value: describeSource({ mark, text: source }) },
    ],
    lists: [],
    cautions: caution ? [caution] : [],
    link: { words: 'See its temperatures', path: `/jobs/${job.number}` },
  };
}
