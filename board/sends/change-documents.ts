import {
  AcceptProposalDocument,
  BookHookupDocument,
  CallWeatherHoldDocument,
  ChangeProtectionDocument,
  ChooseProtectionDocument,
  CommitJobDocument,
  CorrectMeasurementDocument,
  DecideHoldPointDocument,
  DropProposalDocument,
  FinishPhaseDocument,
  LiftWeatherHoldDocument,
  ProposeMoveDocument,
  MarkPhaseDocument,
  NotePhaseDocument,
  PutBackPhaseDocument,
  RecordCableReadingDocument,
  RecordHookupDocument,
  RecordPlacementDocument,
  RecordTemperatureDocument,
  RefuseHoldPointDocument,
  ReleasePhotoDocument,
  ReleaseHoldPointDocument,
  RevokeLoggerDocument,
  RevokeSignedLinkDocument,
  StartImprovementDocument,
  StartPhaseDocument,
  StopImprovementDocument,
  TakeBackPhotoDocument,
  TakeProtectionOffDocument,
  TellRemainingDocument,
  type TypedDocumentString,
  UndoProposalDocument,
  WaiveFindingDocument,
} from '../api/documents.js';

/**
 * The document of every change, by the name under which a kept change finds it again. A name stays when the pages use
 * it no more: a phone that lay in a truck for weeks may still have one to send.
 */
export const CHANGE_DOCUMENTS = {
  markPhase: MarkPhaseDocument,
  notePhase: NotePhaseDocument,
  tellRemaining: TellRemainingDocument,
  decideHoldPoint: DecideHoldPointDocument,
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
  revokeSignedLink: RevokeSignedLinkDocument,
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
  releasePhoto: ReleasePhotoDocument,
  takeBackPhoto: TakeBackPhotoDocument,
  waiveFinding: WaiveFindingDocument,
  correctMeasurement: CorrectMeasurementDocument,
} as const;

type DocumentName = keyof typeof CHANGE_DOCUMENTS;

/** What is told of a photo beside its picture. */
export interface PhotoInput {
  readonly phaseId: string;
  readonly holdPointId?: string | null;
  readonly caption: string | null;
  readonly takenAt: string;
}

/** A photo is sent as a file; every other change as its document. */
export type ChangeName = DocumentName | 'addPhoto';

/** The input of a change without what the sending adds. */
export type ChangeInput<N extends ChangeName> = N extends 'addPhoto'
  ? PhotoInput
  : DocumentInput<N & DocumentName>;

type DocumentInput<N extends DocumentName> =
  (typeof CHANGE_DOCUMENTS)[N] extends TypedDocumentString<unknown, infer V>
    ? V extends { input: infer I }
      ? Omit<I, 'clientKey' | 'fromOutbox'>
      : never
    : never;
