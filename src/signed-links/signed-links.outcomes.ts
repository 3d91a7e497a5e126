import { Field, ObjectType } from '@nestjs/graphql';
import { WrongState } from '../phases/phases.face.js';
import { outcomeUnion } from '../platform/outcomes/outcome-union.js';

/** What `makeSignedLink` gives: the link, and its address this one time. */
@ObjectType({ description: 'The link, and its address this one time.' })
export class SignedLinkMade {
  readonly signedLinkId!: string;

  @Field(() => String, {
    nullable: true,
    description:
      'The address to send. It is shown once and kept nowhere: a repeated answer has null; then take the link back and make another.',
  })
  readonly address!: string | null;
}

/** What `revokeSignedLink` gives. */
@ObjectType({ description: 'The link as it now stands.' })
export class SignedLinkChanged {
  readonly signedLinkId!: string;
}

/** What `makeSignedLink` answers. */
export const MakeSignedLinkOutcome = outcomeUnion('MakeSignedLinkOutcome', SignedLinkMade, [WrongState]);

/** What `revokeSignedLink` answers. */
export const RevokeSignedLinkOutcome = outcomeUnion('RevokeSignedLinkOutcome', SignedLinkChanged, [
  WrongState,
]);
