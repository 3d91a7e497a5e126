import { ObjectType } from '@nestjs/graphql';

/** The electrician's sheet of one job, as a signed link opens it. */
@ObjectType({ description: "The electrician's sheet of one job, as a signed link opens it." })
export class HookupSheet {
  readonly jobId!: string;
}
