import { Field, ObjectType } from '@nestjs/graphql';
import { WrongState } from '../../phases/phases.face.js';
import { outcomeUnion } from '../../platform/outcomes/outcome-union.js';

/** What `registerLogger` gives: the logger, and its token this one time. */
@ObjectType({ description: 'The logger, and its token this one time.' })
export class LoggerRegistered {
  readonly loggerId!: string;

  @Field(() => String, {
    nullable: true,
    description:
      'The token to put into the logger. It is shown once and kept nowhere: a repeated answer has null; then revoke the logger and register it again.',
  })
  readonly token!: string | null;

  @Field(() => String, {
    description: 'Path to which it posts, with the header Authorization: Bearer TOKEN.',
  })
  readonly path!: string;
}

/** What `revokeLogger` gives. */
@ObjectType({ description: 'The logger as it now stands.' })
export class LoggerChanged {
  readonly loggerId!: string;
}

/** What `registerLogger` answers. */
export const RegisterLoggerOutcome = outcomeUnion('RegisterLoggerOutcome', LoggerRegistered);

/** What `revokeLogger` answers. */
export const RevokeLoggerOutcome = outcomeUnion('RevokeLoggerOutcome', LoggerChanged, [WrongState]);
