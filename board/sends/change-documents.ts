import {
  AcceptProposalDocument,
  BookHookupDocument,
  CallWeatherHoldDocument,
  ChangeProtectionDocument,
  ChooseProtectionDocument,
  CommitJobDocument,
  DropProposalDocument,
  FinishPhaseDocument,
  LiftWeatherHoldDocument,
  ProposeMoveDocument,
  PutBackPhaseDocument,
  RecordCableReadingDocument,
  RecordHookupDocument,
  RecordPlacementDocument,
  RecordTemperatureDocument,
  RefuseHoldPointDocument,
  ReleaseHoldPointDocument,
  RevokeLoggerDocument,
  StartImprovementDocument,
  StartPhaseDocument,
  StopImprovementDocument,
  TakeProtectionOffDocument,
  type TypedDocumentString,
  UndoProposalDocument,
} from '../api/documents.js';

/** The document of every change, by the name under which a kept change finds it again after a reload. */
export const CHANGE_DOCUMENTS = {
  startPhase: StartPhaseDocument,
  finishPhase: FinishPhaseDocument,
  putBackPhase: PutBackPhaseDocument,
  releaseHoldPoint: ReleaseHoldPointDocument,
  refuseHoldPoint: RefuseHoldPointDocument,
  recordCableReading: RecordCableReadingDocument,
  recordTemperature: RecordTemperatureDocument,
  recordPlacement: RecordPlacementDocument,
  changeProtection: ChangeProtectionDocument,
  takeProtectionOff: TakeProtectionOffDocument,
  chooseProtection: ChooseProtectionDocument,
  revokeLogger: RevokeLoggerDocument,
  callWeatherHold: CallWeatherHoldDocument,
  liftWeatherHold: LiftWeatherHoldDocument,
  acceptProposal: AcceptProposalDocument,
  dropProposal: DropProposalDocument,
  undoProposal: UndoProposalDocument,
  proposeMove: ProposeMoveDocument,
  startImprovement: StartImprovementDocument,
  stopImprovement: StopImprovementDocument,
  commitJob: CommitJobDocument,
  bookHookup: BookHookupDocument,
  recordHookup: RecordHookupDocument,
} as const;

export type ChangeName = keyof typeof CHANGE_DOCUMENTS;

/** The input of a change without its client key, which the sending adds. */
export type ChangeInput<N extends ChangeName> =
  (typeof CHANGE_DOCUMENTS)[N] extends TypedDocumentString<unknown, infer V>
    ? V extends { input: infer I }
      ? Omit<I, 'clientKey'>
      : never
    : never;
