import { Field, ObjectType } from '@nestjs/graphql';
import { Refusal } from '../../platform/outcomes/refusal.js';
import { Finding } from '../finding.model.js';

/** A measured value is missing or outside its limit. */
@ObjectType({
  implements: () => [Refusal],
  description: 'A measured value is missing or outside its limit; nothing was released.',
})
export class LimitExceeded extends Refusal {
  override readonly code = 'LimitExceeded';
  override readonly message: string;

  @Field(() => [Finding], { description: 'What every rule found, the kept limits too.' })
  readonly findings: Finding[];

  constructor(
    findings: readonly Finding[],
    next = 'Put it right and measure again, or refuse the hold point.',
  ) {
    super();
    this.findings = [...findings];
    const bad = findings.filter(({ ok }) => !ok).map(({ text }) => text.replace(/\.$/, ''));
    this.message = `${bad.join('; ')}. ${next}`;
  }
}
