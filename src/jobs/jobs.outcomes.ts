import { ObjectType } from '@nestjs/graphql';
import { HoldPointOpen, NotWaivable } from '../inspections/inspections.face.js';
import { PhaseChanged, WrongState } from '../phases/phases.face.js';
import { connectionType } from '../platform/graphql/page.js';
import { outcomeUnion } from '../platform/outcomes/outcome-union.js';
import { LinkCycle } from './custom/link-cycle.js';
import { Job } from './job.model.js';

/** What a change of a job gives; the row is loaded when it is asked for. */
@ObjectType({ description: 'The job as it now stands.' })
export class JobChanged {
  readonly jobId!: string;
}

/** What a change of a link gives; the rows are loaded when they are asked for. */
@ObjectType({ description: 'The job as it now stands, and the link that was added.' })
export class LinkChanged {
  readonly jobId!: string;
  readonly linkId!: string;
}

export const JobConnection = connectionType('Job', Job);
export const CreateJobOutcome = outcomeUnion('CreateJobOutcome', JobChanged);
export const UpdateJobOutcome = outcomeUnion('UpdateJobOutcome', JobChanged, [WrongState]);
export const CancelJobOutcome = outcomeUnion('CancelJobOutcome', JobChanged, [WrongState]);
export const CorrectMeasurementOutcome = outcomeUnion('CorrectMeasurementOutcome', JobChanged, [WrongState]);
export const WaiveFindingOutcome = outcomeUnion('WaiveFindingOutcome', JobChanged, [WrongState, NotWaivable]);
export const AddPhaseOutcome = outcomeUnion('AddPhaseOutcome', PhaseChanged, [WrongState, LinkCycle]);
export const DropPhaseOutcome = outcomeUnion('DropPhaseOutcome', PhaseChanged, [WrongState, HoldPointOpen]);
export const AddLinkOutcome = outcomeUnion('AddLinkOutcome', LinkChanged, [WrongState, LinkCycle]);
export const RemoveLinkOutcome = outcomeUnion('RemoveLinkOutcome', LinkChanged, [WrongState]);
