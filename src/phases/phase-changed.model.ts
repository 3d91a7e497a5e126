import { ObjectType } from '@nestjs/graphql';

/** What starting, finishing, adding or moving a phase gives; the row is loaded when it is asked for. */
@ObjectType({ description: 'The phase as it now stands.' })
export class PhaseChanged {
  readonly phaseId!: string;
}
