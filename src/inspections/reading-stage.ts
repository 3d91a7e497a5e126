import { registerEnumType } from '@nestjs/graphql';
import { ReadingStage } from '../generated/prisma/enums.js';

registerEnumType(ReadingStage, {
  name: 'ReadingStage',
  description: 'When a heating set is tested.',
  valuesMap: {
    received: { description: 'As delivered, before anything is unrolled.' },
    laid: { description: 'Laid and fastened, before anything covers it.' },
    covered: { description: 'After covering.' },
    beforeHookup: { description: 'Last, before the electrician connects it.' },
  },
});

export { ReadingStage };
