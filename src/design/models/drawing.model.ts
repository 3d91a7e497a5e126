import { Field, Float, ObjectType } from '@nestjs/graphql';

/** A drawing of an entry that prints to scale. */
@ObjectType({ description: 'A drawing of the entry that prints to scale.' })
export class Drawing {
  @Field(() => String, { description: 'Stable key: section, or cable- with the key of the heating set.' })
  readonly key!: string;

  @Field(() => String, { description: 'What it shows.' })
  readonly title!: string;

  @Field(() => Float, { description: 'Inches of the real thing to an inch of paper.' })
  readonly scale!: number;

  @Field(() => Float, { description: 'Width on paper, in.' })
  readonly width!: number;

  @Field(() => Float, { description: 'Height on paper, in.' })
  readonly height!: number;

  @Field(() => String, { description: 'The drawing as SVG; its width and height are inches of paper.' })
  readonly svg!: string;
}
