import { Field, Float, Int, ObjectType } from '@nestjs/graphql';
import { kindsOf, type ProtectionSpec, protectionWords } from './protection-spec.js';

/** How a placement is kept warm. */
@ObjectType({ description: 'How a placement is kept warm.' })
export class Protection {
  @Field(() => Int, { description: 'Layers of insulated blanket on it.' })
  readonly blanketLayers!: number;

  @Field(() => Float, { description: 'Thermal resistance of one layer, h·ft²·°F/Btu.' })
  readonly blanketR!: number;

  @Field(() => Float, {
    nullable: true,
    description: 'Temperature inside a heated enclosure, °F; null when there is none.',
  })
  readonly enclosureF!: number | null;

  @Field(() => Float, { description: 'Hours from placing in which the enclosure is heated.' })
  readonly heatHours!: number;

  @Field(() => [String], { description: 'Kinds of equipment it takes: blanket, enclosure, heater.' })
  readonly kinds!: string[];

  @Field(() => String, { description: 'The same in words.' })
  readonly text!: string;
}

/** A stored protection as callers see it. */
export const protectionModel = (spec: ProtectionSpec): Protection => ({
  ...spec,
  kinds: kindsOf(spec),
  text: protectionWords(spec),
});
