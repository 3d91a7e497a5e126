import { Field, ID, Int, ObjectType, registerEnumType } from '@nestjs/graphql';
import { Role } from '../generated/prisma/enums.js';

registerEnumType(Role, {
  name: 'Role',
  description: 'What a person does in the company, and so what they may change.',
  valuesMap: {
    office: { description: 'Enters jobs, schedules crews, decides proposals and waivers.' },
    foreman: { description: 'Runs phases on site, decides hold points, calls weather holds.' },
    crew: { description: 'Works in a crew; reads the plan.' },
    electrician: { description: 'Is told when leads are ready, books and records hookups.' },
    viewer: { description: 'Reads only.' },
  },
});

/** A person of the company. */
@ObjectType({ description: 'A person of the company.' })
export class Person {
  @Field(() => ID, { description: 'Id of the person.' })
  readonly id!: string;

  @Field(() => String, { description: 'Name as shown to others.' })
  readonly name!: string;

  @Field(() => String, { description: 'Address that notices go to and that signs in.' })
  readonly email!: string;

  @Field(() => Role, { description: 'What the person does.' })
  readonly role!: Role;

  @Field(() => String, { description: 'IANA time zone of the person.' })
  readonly zone!: string;

  @Field(() => Int, { description: 'Revision of the row.' })
  readonly revision!: number;
}

/** The company of the signed-in person. */
@ObjectType({ description: 'The company of the signed-in person.' })
export class Company {
  @Field(() => ID, { description: 'Id of the company.' })
  readonly id!: string;

  @Field(() => String, { description: 'Name of the company.' })
  readonly name!: string;

  @Field(() => String, { description: 'IANA time zone of the office.' })
  readonly zone!: string;

  @Field(() => Int, { description: 'Commitments that start within this many days do not move by a re-plan.' })
  readonly freezeDays!: number;

  @Field(() => Int, { description: 'Number of the current plan.' })
  readonly planNumber!: number;
}

/** What signing in gives. */
@ObjectType({ description: 'The person who is now signed in.' })
export class SignedIn {
  @Field(() => Person, { description: 'Who is signed in.' })
  readonly person!: Person;
}
