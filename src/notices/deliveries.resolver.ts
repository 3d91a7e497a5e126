import { Parent, ResolveField, Resolver } from '@nestjs/graphql';
import type { Delivery as DeliveryRow } from '../generated/prisma/client.js';
import { PeopleService, Person } from '../people/people.face.js';
import type { Context } from '../platform/context.js';
import { Ctx } from '../platform/graphql/request-context.js';
import { Delivery } from './notice.model.js';

@Resolver(() => Delivery)
export class DeliveriesResolver {
  constructor(private readonly people: PeopleService) {}

  @ResolveField(() => Person, { nullable: true, description: 'Whom it goes to.' })
  recipient(@Ctx() ctx: Context, @Parent() delivery: DeliveryRow) {
    return this.people.byId(ctx, delivery.recipientId);
  }
}
