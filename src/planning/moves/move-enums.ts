import { registerEnumType } from '@nestjs/graphql';
import { MoveWay, ProposedMoveState } from '../../generated/prisma/enums.js';

registerEnumType(MoveWay, {
  name: 'MoveWay',
  description: 'How another start for a phase is meant.',
  valuesMap: {
    notBefore: { description: 'At the first place from then on that everything else allows.' },
    fixed: { description: 'Then; what that breaks is a conflict of the plan.' },
  },
});

registerEnumType(ProposedMoveState, {
  name: 'ProposedMoveState',
  description: 'What has become of a move.',
  valuesMap: {
    offered: { description: 'It waits as a proposal.' },
    accepted: { description: 'The office accepted its proposal; the plan follows it.' },
    dropped: { description: 'The office dropped its proposal, or tried another move.' },
    outdated: { description: 'Facts have moved so that it can no longer be made; the message says why.' },
    unchanged: { description: 'It moved nothing.' },
    undone: { description: 'It was accepted, and undone.' },
  },
});
