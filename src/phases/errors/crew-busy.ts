import { Field, GraphQLISODateTime, ObjectType } from '@nestjs/graphql';
import { Refusal } from '../../platform/outcomes/refusal.js';

/** Who is busy where. */
export interface BusyCrew {
  readonly crewId: string;
  readonly crewName: string;
  /** The phase that keeps the crew. */
  readonly phaseId: string;
  readonly phaseName: string;
  readonly from: Date;
  /** Null while nobody knows. */
  readonly to: Date | null;
}

/** The crew is at another phase in that time. */
@ObjectType({ implements: () => [Refusal], description: 'The crew is at another phase in that time.' })
export class CrewBusy extends Refusal {
  override readonly code = 'CrewBusy';
  override readonly message: string;
  readonly crewId: string;
  readonly phaseId: string;

  @Field(() => GraphQLISODateTime, { description: 'Since when it is busy.' })
  readonly from: Date;

  @Field(() => GraphQLISODateTime, { nullable: true, description: 'Until when; null while nobody knows.' })
  readonly to: Date | null;

  constructor(busy: BusyCrew) {
    super();
    this.crewId = busy.crewId;
    this.phaseId = busy.phaseId;
    this.from = busy.from;
    this.to = busy.to;
    this.message = `${busy.crewName} is busy with ${busy.phaseName}. Finish that first, or choose another crew or time.`;
  }
}
