import { Field, ObjectType } from '@nestjs/graphql';
import { Finding } from '../../inspections/inspections.face.js';
import { Refusal } from '../../platform/outcomes/refusal.js';

/** The rules say that the protection must stay on. */
@ObjectType({ implements: () => [Refusal], description: 'The rules say that the protection must stay on.' })
export class ProtectionMustStay extends Refusal {
  override readonly code = 'ProtectionMustStay';
  override readonly message: string;

  @Field(() => Finding, { description: 'What is in the way, with its limit and source.' })
  readonly finding: Finding;

  constructor(finding: Finding) {
    super();
    this.finding = finding;
    this.message = `${finding.text}. Wait until it may come off, or have the office decide with a reason.`;
  }
}
