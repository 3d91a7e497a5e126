import { ObjectType } from '@nestjs/graphql';
import { Refusal } from '../../platform/outcomes/refusal.js';

/** The links asked for would make phases wait for each other. */
@ObjectType({
  implements: () => [Refusal],
  description: 'The links asked for would make phases wait for each other.',
})
export class LinkCycle extends Refusal {
  override readonly code = 'LinkCycle';
  override readonly message: string;
  readonly phaseIds: readonly string[];

  /** @param phases those that would wait for each other, in order; the last waits for the first. */
  constructor(phases: readonly { readonly id: string; readonly name: string }[]) {
    super();
    this.phaseIds = phases.map(({ id }) => id);
    const names = phases.map(({ name }) => name).join(' → ');
    this.message = `${names} → ${phases[0]?.name ?? ''}: each would wait for the one before. Leave this link out, or remove one of the others first.`;
  }
}
