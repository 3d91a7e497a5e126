import { registerEnumType } from '@nestjs/graphql';

/** What became of an intent that is not in conflict and not refused. */
export const IntentAnswer = { applied: 'applied', alreadyApplied: 'alreadyApplied' } as const;
export type IntentAnswer = (typeof IntentAnswer)[keyof typeof IntentAnswer];

registerEnumType(IntentAnswer, {
  name: 'IntentAnswer',
  description: 'What became of an intent.',
  valuesMap: {
    applied: { description: 'The field has the new value by this intent.' },
    alreadyApplied: { description: 'The field had this value already; nothing was written.' },
  },
});
