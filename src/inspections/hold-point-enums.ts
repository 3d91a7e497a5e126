import { registerEnumType } from '@nestjs/graphql';
import { Gate, HoldPointKind, HoldPointState } from '../generated/prisma/enums.js';

registerEnumType(HoldPointKind, {
  name: 'HoldPointKind',
  description: 'What kind of thing must be released.',
  valuesMap: {
    check: { description: 'Measured and confirmed by the crew.' },
    inspection: { description: 'Passed by the authority having jurisdiction.' },
    clearance: { description: 'Leave from outside: permit, mark-out, material.' },
    cure: { description: 'Strength of what was placed.' },
    reading: { description: 'Accepted resistance and insulation reading of a heating set.' },
  },
});
registerEnumType(Gate, {
  name: 'Gate',
  description: 'What a hold point stands before.',
  valuesMap: {
    start: { description: 'Must be released before the phase starts.' },
    finish: { description: 'Must be released before the phase finishes.' },
  },
});
registerEnumType(HoldPointState, {
  name: 'HoldPointState',
  description: 'State of a hold point.',
  valuesMap: {
    open: { description: 'Not decided yet.' },
    released: { description: 'Released; the gate is open.' },
    refused: { description: 'Refused; it can be released later.' },
    waived: { description: 'Waived by the office with a reason.' },
  },
});
