import { Field, Float, ObjectType } from '@nestjs/graphql';

const W = 'W/ft²';

/** What a heated area asks for under the snowfall it is designed for, part by part, and what its set gives. */
@ObjectType({
  description: 'Heat that an area asks for under its design snowfall, by parts, and what it is given.',
})
export class AreaHeat {
  @Field(() => String, { description: 'Key of the area.' })
  readonly areaKey!: string;

  @Field(() => String, { description: 'Name of the area.' })
  readonly areaName!: string;

  @Field(() => Float, { description: `Warming the snow to melting, ${W}.` })
  readonly sensible!: number;

  @Field(() => Float, { description: `Melting it, ${W}.` })
  readonly melting!: number;

  @Field(() => Float, { description: `Lost to wind and sky, by the free-area ratio, ${W}.` })
  readonly convectionAndRadiation!: number;

  @Field(() => Float, { description: `Drying the surface, by the free-area ratio, ${W}.` })
  readonly evaporation!: number;

  @Field(() => Float, { description: `Lost to the ground, ${W}.` })
  readonly back!: number;

  @Field(() => Float, { description: `Lost at open edges, ${W}.` })
  readonly edge!: number;

  @Field(() => Float, { description: `All parts together, ${W}.` })
  readonly total!: number;

  @Field(() => Float, { description: `What the heating set gives, ${W}.` })
  readonly given!: number;

  @Field(() => Float, { description: `The short form's opinion of the top, beside the balance's, ${W}.` })
  readonly topByShortForm!: number;

  @Field(() => Float, { description: `The balance at the top alone, ${W}.` })
  readonly top!: number;

  @Field(() => Float, {
    nullable: true,
    description: 'From the design air to above freezing, h; null when never.',
  })
  readonly warmUpHours!: number | null;

  @Field(() => [String], { description: 'Where method and snowfall come from, each with its mark in words.' })
  readonly sources!: readonly string[];
}
