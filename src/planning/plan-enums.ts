import { registerEnumType } from '@nestjs/graphql';
import { CommitmentState, ProposalState } from '../generated/prisma/enums.js';

registerEnumType(CommitmentState, {
  name: 'CommitmentState',
  description: 'What has become of dates told to people.',
  valuesMap: {
    held: { description: 'They stand.' },
    kept: { description: 'The phase was finished under them.' },
    released: { description: 'They were taken back or replaced.' },
  },
});

registerEnumType(ProposalState, {
  name: 'ProposalState',
  description: 'What has become of a proposal.',
  valuesMap: {
    open: { description: 'Waits for the office.' },
    accepted: { description: 'The commitments were moved as it says.' },
    dropped: { description: 'The office keeps the commitments as they are.' },
    undone: { description: 'It was accepted, and undone.' },
    superseded: { description: 'A later plan differs otherwise, or no longer.' },
  },
});
