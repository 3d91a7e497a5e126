import { Field, ObjectType } from '@nestjs/graphql';
import { NeedsMissing } from '../../hookups/hookups.face.js';
import {
  ClearanceMissing,
  HoldPointOpen,
  InspectionOutstanding,
  ReadingMissing,
} from '../../inspections/inspections.face.js';
import { FieldConflict } from '../../platform/outcomes/field-conflict.js';
import { IntentAnswer } from '../../platform/outcomes/intent-answer.js';
import { outcomeUnion } from '../../platform/outcomes/outcome-union.js';
import { BeforePredecessor } from '../errors/before-predecessor.js';
import { CrewBusy } from '../errors/crew-busy.js';
import { DesignBroken } from '../errors/design-broken.js';
import { EquipmentOut } from '../errors/equipment-out.js';
import { PredecessorUnfinished } from '../errors/predecessor-unfinished.js';
import { WeatherHeld } from '../errors/weather-held.js';
import { WrongState } from '../errors/wrong-state.js';

/** What an intent about a phase gives; the row is loaded when it is asked for. */
@ObjectType({ description: 'The phase as it now stands, and whether this intent made it so.' })
export class PhaseSettled {
  readonly phaseId!: string;

  @Field(() => IntentAnswer, { description: 'Whether this intent made it so, or it was so already.' })
  readonly answer!: IntentAnswer;
}

/** What `markPhase` answers. */
export const MarkPhaseOutcome = outcomeUnion('MarkPhaseOutcome', PhaseSettled, [
  FieldConflict,
  WrongState,
  PredecessorUnfinished,
  BeforePredecessor,
  InspectionOutstanding,
  ClearanceMissing,
  ReadingMissing,
  HoldPointOpen,
  DesignBroken,
  NeedsMissing,
  WeatherHeld,
  CrewBusy,
  EquipmentOut,
]);

/** What `notePhase` answers. */
export const NotePhaseOutcome = outcomeUnion('NotePhaseOutcome', PhaseSettled, [FieldConflict, WrongState]);

/** What `tellRemaining` answers. */
export const TellRemainingOutcome = outcomeUnion('TellRemainingOutcome', PhaseSettled, [
  FieldConflict,
  WrongState,
]);
