import { NeedsMissing } from '../hookups/hookups.face.js';
import {
  ClearanceMissing,
  HoldPointOpen,
  InspectionOutstanding,
  ReadingMissing,
} from '../inspections/inspections.face.js';
import { outcomeUnion } from '../platform/outcomes/outcome-union.js';
import { BeforePredecessor } from './errors/before-predecessor.js';
import { CrewBusy } from './errors/crew-busy.js';
import { DesignBroken } from './errors/design-broken.js';
import { EquipmentOut } from './errors/equipment-out.js';
import { PredecessorUnfinished } from './errors/predecessor-unfinished.js';
import { WeatherHeld } from './errors/weather-held.js';
import { WrongState } from './errors/wrong-state.js';
import { PhaseChanged } from './phase-changed.model.js';

/** What a gate that is not open is refused with. */
const GATE = [
  WrongState,
  PredecessorUnfinished,
  BeforePredecessor,
  InspectionOutstanding,
  ClearanceMissing,
  ReadingMissing,
  HoldPointOpen,
] as const;

/** What `startPhase` answers. */
export const StartPhaseOutcome = outcomeUnion('StartPhaseOutcome', PhaseChanged, [
  ...GATE,
  DesignBroken,
  NeedsMissing,
  WeatherHeld,
  CrewBusy,
  EquipmentOut,
]);

/** What `finishPhase` answers. */
export const FinishPhaseOutcome = outcomeUnion('FinishPhaseOutcome', PhaseChanged, GATE);

/** What `putBackPhase` answers. */
export const PutBackPhaseOutcome = outcomeUnion('PutBackPhaseOutcome', PhaseChanged, [WrongState, CrewBusy]);

/** What `recordProgress` answers. */
export const RecordProgressOutcome = outcomeUnion('RecordProgressOutcome', PhaseChanged, [WrongState]);
