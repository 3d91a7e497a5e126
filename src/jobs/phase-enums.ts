import { registerEnumType } from '@nestjs/graphql';
import { Continuity, DurationKind, Origin, PhaseState } from '../generated/prisma/enums.js';

registerEnumType(DurationKind, {
  name: 'DurationKind',
  description: 'How a duration is counted.',
  valuesMap: {
    work: { description: 'In the open hours of the crew.' },
    elapsed: { description: 'By the clock, nights and closed days included: a cure.' },
  },
});

registerEnumType(Continuity, {
  name: 'Continuity',
  description: 'Whether a phase may pause.',
  valuesMap: {
    continuous: { description: 'Must fit one open stretch: a pour.' },
    interruptible: { description: 'Pauses overnight, over closed days and through weather holds.' },
  },
});

registerEnumType(PhaseState, {
  name: 'PhaseState',
  description: 'How far a phase is.',
  valuesMap: {
    waiting: { description: 'Not started.' },
    started: { description: 'Started and not finished.' },
    done: { description: 'Finished.' },
    dropped: { description: 'Taken out of the job; nothing waits for it.' },
  },
});

registerEnumType(Origin, {
  name: 'Origin',
  description: 'Where a phase or link comes from.',
  valuesMap: {
    template: { description: 'From the template of the job.' },
    custom: { description: 'Added to this job by the office.' },
  },
});
