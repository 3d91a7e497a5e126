import { ObjectType } from '@nestjs/graphql';
import { outcomeUnion } from '../platform/outcomes/outcome-union.js';

/** What releasing a photo gives; the row is loaded when it is asked for. */
@ObjectType({ description: 'The photo as it now stands.' })
export class PhotoChanged {
  readonly photoId!: string;
}

/** What `releasePhoto` answers. */
export const ReleasePhotoOutcome = outcomeUnion('ReleasePhotoOutcome', PhotoChanged);

/** What `takeBackPhoto` answers. */
export const TakeBackPhotoOutcome = outcomeUnion('TakeBackPhotoOutcome', PhotoChanged);
