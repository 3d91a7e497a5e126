import { Field, ObjectType } from '@nestjs/graphql';
import { Refusal } from './refusal.js';

/** One fault of an input. */
@ObjectType({ description: 'One fault of an input.' })
export class InputFault {
  @Field(() => String, { description: 'Where: the path inside the input, such as areas.1.riserInches.' })
  readonly path!: string;

  @Field(() => String, { description: 'What is wrong and what to enter instead.' })
  readonly message!: string;
}

/** The input cannot be used; every fault is listed. */
@ObjectType({ implements: () => [Refusal], description: 'The input cannot be used; every fault is listed.' })
export class InvalidInput extends Refusal {
  override readonly code = 'InvalidInput';
  override readonly message: string;

  @Field(() => [InputFault], { description: 'All faults found.' })
  readonly faults: InputFault[];

  constructor(faults: readonly InputFault[]) {
    super();
    this.faults = [...faults];
    this.message = faults.map(sentence).join(' ');
  }
}

function sentence({ path, message }: InputFault): string {
  const said = path ? `${path}: ${message}` : message;
  return /[.!?]$/.test(said) ? said : `${said}.`;
}
