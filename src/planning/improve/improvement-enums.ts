import { registerEnumType } from '@nestjs/graphql';
import { ImprovementState, ImprovementStop } from '../../generated/prisma/enums.js';

registerEnumType(ImprovementState, {
  name: 'ImprovementState',
  description: 'What has become of a search for a better plan.',
  valuesMap: {
    waiting: { description: 'No worker has begun it yet.' },
    running: { description: 'A worker searches.' },
    offered: { description: 'It found a better plan, which waits as a proposal.' },
    accepted: { description: 'The office accepted its proposal; the plan follows it.' },
    dropped: { description: 'The office dropped its proposal.' },
    outdated: {
      description: 'Facts have moved so that its plan is no longer better, or a later search took its place.',
    },
    unchanged: { description: 'It found nothing better than the plan in force.' },
    stopped: { description: 'It was stopped, and what it had found was thrown away.' },
    failed: { description: 'It could not be done; the message says why.' },
  },
});

registerEnumType(ImprovementStop, {
  name: 'ImprovementStop',
  description: 'How to stop a search.',
  valuesMap: {
    keep: { description: 'The best plan so far is proposed, if it is better than the one in force.' },
    discard: { description: 'What it has found is thrown away.' },
  },
});
