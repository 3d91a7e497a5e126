import { Field, InterfaceType } from '@nestjs/graphql';

/** An expected outcome that is not the asked-for change; nothing was written. */
@InterfaceType({
  description: 'Why a change was not made; nothing was written. The message says what to do next.',
})
export abstract class Refusal {
  @Field(() => String, { description: 'Stable name of the refusal, the same as its type.' })
  abstract readonly code: string;

  @Field(() => String, { description: 'One or two sentences for a person: what is missing and what to do.' })
  abstract readonly message: string;
}

/** Leaves a transaction with a refusal: everything written in it is rolled back and the refusal is the answer. */
export class Refused extends Error {
  constructor(readonly refusal: Refusal) {
    super(refusal.message);
    this.name = 'Refused';
  }
}
