import { Field, ObjectType } from '@nestjs/graphql';
import { CableLayout } from './cable.model.js';
import { DesignCircuit } from './design-circuit.model.js';
import { DesignFooting } from './footing.model.js';
import { Drawing } from './drawing.model.js';
import { AreaHeat } from './heat.model.js';
import { DesignRisers } from './risers.model.js';

/** The design of an entry from its measurement. What nothing was measured for is empty or null. */
@ObjectType({
  description:
    'The design of the entry from its measurement; what nothing was measured for is empty or null.',
})
export class EntryDesign {
  @Field(() => [AreaHeat], { description: 'Heat of every heated area; empty when no snowfall is given.' })
  readonly heat!: readonly AreaHeat[];

  @Field(() => [CableLayout], { description: 'Every heating set on the plan; empty when no plan was drawn.' })
  readonly cables!: readonly CableLayout[];

  @Field(() => [DesignCircuit], { description: 'Circuits; empty when the supply is not given.' })
  readonly circuits!: readonly DesignCircuit[];

  @Field(() => DesignRisers, { nullable: true, description: 'Risers; null when the heights are not given.' })
  readonly risers!: DesignRisers | null;

  @Field(() => DesignFooting, { nullable: true, description: 'Footing; null when nothing stands on one.' })
  readonly footing!: DesignFooting | null;

  @Field(() => [Drawing], { description: 'The plan of every set, and the section, each to scale.' })
  readonly drawings!: readonly Drawing[];
}
