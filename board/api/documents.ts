// Written by scripts/client-documents.ts from the schema and the operations; do not edit.
import type { DocumentTypeDecoration } from '@graphql-typed-document-node/core';
export type Maybe<T> = T | null;
export type InputMaybe<T> = Maybe<T>;
export type Exact<T extends { [key: string]: unknown }> = { [K in keyof T]: T[K] };
export type MakeOptional<T, K extends keyof T> = Omit<T, K> & { [SubKey in K]?: Maybe<T[SubKey]> };
export type MakeMaybe<T, K extends keyof T> = Omit<T, K> & { [SubKey in K]: Maybe<T[SubKey]> };
export type MakeEmpty<T extends { [key: string]: unknown }, K extends keyof T> = { [_ in K]?: never };
export type Incremental<T> =
  T | { [P in keyof T]?: P extends ' $fragmentName' | '__typename' ? T[P] : never };
/** All built-in and custom scalars, mapped to their actual values */
export type Scalars = {
  ID: { input: string; output: string };
  String: { input: string; output: string };
  Boolean: { input: boolean; output: boolean };
  Int: { input: number; output: number };
  Float: { input: number; output: number };
  DateTime: { input: string; output: string };
};

export type Role = 'office' | 'foreman' | 'crew' | 'electrician' | 'viewer';

export type JobState = 'entered' | 'running' | 'done' | 'cancelled';

export type AreaKind = 'landing' | 'flight' | 'walk';

export type DurationKind = 'work' | 'elapsed';

export type Continuity = 'continuous' | 'interruptible';

export type PhaseState = 'waiting' | 'started' | 'done' | 'dropped';

export type Origin = 'template' | 'custom';

export type HoldPointKind = 'check' | 'inspection' | 'clearance' | 'cure' | 'reading';

export type Gate = 'start' | 'finish';

export type HoldPointState = 'open' | 'released' | 'refused' | 'waived';

export type ClearanceKind = 'permit' | 'markOut' | 'material';

export type ClearanceState = 'needed' | 'requested' | 'cleared';

export type InspectionState = 'needed' | 'requested' | 'booked' | 'passed' | 'failed';

export type HoldCause = 'called' | 'forecast';

export type ReadingStage = 'received' | 'laid' | 'covered' | 'beforeHookup';

export type HookupState = 'waiting' | 'ready' | 'booked' | 'done';

export type CommitmentState = 'held' | 'kept' | 'released';

export type ProposalState = 'open' | 'accepted' | 'dropped' | 'superseded';

export type StrengthBasis = 'measured' | 'predicted';

export type SignInInput = {
  readonly email: Scalars['String']['input'];
  readonly password: Scalars['String']['input'];
};

export type StartPhaseInput = {
  readonly clientKey: Scalars['ID']['input'];
  readonly revision?: InputMaybe<Scalars['Int']['input']>;
  readonly phaseId: Scalars['ID']['input'];
  readonly at?: InputMaybe<Scalars['DateTime']['input']>;
  readonly crewId?: InputMaybe<Scalars['ID']['input']>;
};

export type FinishPhaseInput = {
  readonly clientKey: Scalars['ID']['input'];
  readonly revision?: InputMaybe<Scalars['Int']['input']>;
  readonly phaseId: Scalars['ID']['input'];
  readonly at?: InputMaybe<Scalars['DateTime']['input']>;
};

export type PutBackPhaseInput = {
  readonly clientKey: Scalars['ID']['input'];
  readonly revision?: InputMaybe<Scalars['Int']['input']>;
  readonly phaseId: Scalars['ID']['input'];
  readonly reason: Scalars['String']['input'];
};

export type MeasuredValueInput = {
  readonly itemId: Scalars['ID']['input'];
  readonly value?: InputMaybe<Scalars['Float']['input']>;
  readonly values?: InputMaybe<ReadonlyArray<Scalars['Float']['input']>>;
  readonly confirmed?: InputMaybe<Scalars['Boolean']['input']>;
};

export type ReleaseHoldPointInput = {
  readonly clientKey: Scalars['ID']['input'];
  readonly revision?: InputMaybe<Scalars['Int']['input']>;
  readonly holdPointId: Scalars['ID']['input'];
  readonly values: ReadonlyArray<MeasuredValueInput>;
  readonly note?: InputMaybe<Scalars['String']['input']>;
};

export type RefuseHoldPointInput = {
  readonly clientKey: Scalars['ID']['input'];
  readonly revision?: InputMaybe<Scalars['Int']['input']>;
  readonly holdPointId: Scalars['ID']['input'];
  readonly values: ReadonlyArray<MeasuredValueInput>;
  readonly reason: Scalars['String']['input'];
};

export type CallWeatherHoldInput = {
  readonly clientKey: Scalars['ID']['input'];
  readonly siteId: Scalars['ID']['input'];
  readonly phaseId?: InputMaybe<Scalars['ID']['input']>;
  readonly startsAt?: InputMaybe<Scalars['DateTime']['input']>;
  readonly endsAt?: InputMaybe<Scalars['DateTime']['input']>;
  readonly reason: Scalars['String']['input'];
};

export type LiftWeatherHoldInput = {
  readonly clientKey: Scalars['ID']['input'];
  readonly revision?: InputMaybe<Scalars['Int']['input']>;
  readonly weatherHoldId: Scalars['ID']['input'];
  readonly reason: Scalars['String']['input'];
};

export type AcceptProposalInput = {
  readonly clientKey: Scalars['ID']['input'];
  readonly revision?: InputMaybe<Scalars['Int']['input']>;
  readonly proposalId: Scalars['ID']['input'];
};

export type DropProposalInput = {
  readonly clientKey: Scalars['ID']['input'];
  readonly revision?: InputMaybe<Scalars['Int']['input']>;
  readonly proposalId: Scalars['ID']['input'];
};

export type CommitJobInput = {
  readonly clientKey: Scalars['ID']['input'];
  readonly jobId: Scalars['ID']['input'];
};

export type RecordCableReadingInput = {
  readonly clientKey: Scalars['ID']['input'];
  readonly heatingSetId: Scalars['ID']['input'];
  readonly stage: ReadingStage;
  readonly areaId?: InputMaybe<Scalars['ID']['input']>;
  readonly at?: InputMaybe<Scalars['DateTime']['input']>;
  readonly ohms: Scalars['Float']['input'];
  readonly megaohms: Scalars['Float']['input'];
  readonly testVolts: Scalars['Float']['input'];
  readonly cableTempF: Scalars['Float']['input'];
};

export type BookHookupInput = {
  readonly clientKey: Scalars['ID']['input'];
  readonly revision?: InputMaybe<Scalars['Int']['input']>;
  readonly hookupId: Scalars['ID']['input'];
  readonly day: Scalars['String']['input'];
};

export type RecordHookupInput = {
  readonly clientKey: Scalars['ID']['input'];
  readonly revision?: InputMaybe<Scalars['Int']['input']>;
  readonly hookupId: Scalars['ID']['input'];
  readonly at?: InputMaybe<Scalars['DateTime']['input']>;
  readonly breakerAmperes: Scalars['Int']['input'];
  readonly disconnect: Scalars['Boolean']['input'];
  readonly groundFault: Scalars['Boolean']['input'];
  readonly note?: InputMaybe<Scalars['String']['input']>;
};

export type GateFieldsFragment = {
  readonly id: string;
  readonly kind: HoldPointKind;
  readonly gate: Gate;
  readonly title: string;
  readonly state: HoldPointState;
};

export type BoardPhaseFragment = {
  readonly id: string;
  readonly name: string;
  readonly hatch: string;
  readonly trade: string | null;
  readonly position: number;
  readonly durationKind: DurationKind;
  readonly state: PhaseState;
  readonly pinnedStart: string | null;
  readonly actualStart: string | null;
  readonly actualFinish: string | null;
  readonly revision: number;
  readonly job: { readonly id: string; readonly number: number };
  readonly area: { readonly id: string; readonly name: string } | null;
  readonly actualCrew: { readonly id: string; readonly name: string } | null;
  readonly planned: {
    readonly startAt: string;
    readonly finishAt: string;
    readonly totalFloatMinutes: number;
    readonly freeFloatMinutes: number;
    readonly critical: boolean;
    readonly weatherUnknown: boolean;
    readonly crew: { readonly id: string; readonly name: string } | null;
    readonly segments: ReadonlyArray<{ readonly from: string; readonly to: string }>;
  } | null;
  readonly commitment: {
    readonly id: string;
    readonly startAt: string;
    readonly finishAt: string;
    readonly state: CommitmentState;
    readonly crew: { readonly id: string; readonly name: string } | null;
  } | null;
  readonly holdPoints: ReadonlyArray<{
    readonly id: string;
    readonly kind: HoldPointKind;
    readonly gate: Gate;
    readonly title: string;
    readonly state: HoldPointState;
  }>;
};

export type BoardJobFragment = {
  readonly id: string;
  readonly number: number;
  readonly name: string;
  readonly state: JobState;
  readonly priority: number;
  readonly dueAt: string | null;
  readonly plannedFinish: string | null;
  readonly committedFinish: string | null;
  readonly site: {
    readonly id: string;
    readonly address: string;
    readonly town: string;
    readonly weatherHolds: ReadonlyArray<{
      readonly id: string;
      readonly cause: HoldCause;
      readonly startsAt: string;
      readonly endsAt: string | null;
      readonly reason: string;
      readonly phase: { readonly id: string } | null;
    }>;
  };
};

export type BoardProposalFragment = {
  readonly id: string;
  readonly number: number;
  readonly cause: string;
  readonly createdAt: string;
  readonly revision: number;
  readonly differences: ReadonlyArray<{
    readonly startBefore: string | null;
    readonly startAfter: string;
    readonly finishBefore: string | null;
    readonly finishAfter: string;
    readonly reason: string;
    readonly phase: {
      readonly id: string;
      readonly name: string;
      readonly job: { readonly id: string; readonly number: number };
    };
    readonly crewBefore: { readonly id: string; readonly name: string } | null;
    readonly crewAfter: { readonly id: string; readonly name: string } | null;
  }>;
  readonly jobFinishes: ReadonlyArray<{
    readonly before: string | null;
    readonly after: string | null;
    readonly job: { readonly id: string; readonly number: number; readonly name: string };
  }>;
};

export type BoardQueryVariables = Exact<{
  from: Scalars['DateTime']['input'];
  to: Scalars['DateTime']['input'];
}>;

export type BoardQuery = {
  readonly board: {
    readonly planNumber: number;
    readonly changeNumber: string;
    readonly now: string;
    readonly jobs: ReadonlyArray<{
      readonly id: string;
      readonly number: number;
      readonly name: string;
      readonly state: JobState;
      readonly priority: number;
      readonly dueAt: string | null;
      readonly plannedFinish: string | null;
      readonly committedFinish: string | null;
      readonly site: {
        readonly id: string;
        readonly address: string;
        readonly town: string;
        readonly weatherHolds: ReadonlyArray<{
          readonly id: string;
          readonly cause: HoldCause;
          readonly startsAt: string;
          readonly endsAt: string | null;
          readonly reason: string;
          readonly phase: { readonly id: string } | null;
        }>;
      };
    }>;
    readonly phases: ReadonlyArray<{
      readonly id: string;
      readonly name: string;
      readonly hatch: string;
      readonly trade: string | null;
      readonly position: number;
      readonly durationKind: DurationKind;
      readonly state: PhaseState;
      readonly pinnedStart: string | null;
      readonly actualStart: string | null;
      readonly actualFinish: string | null;
      readonly revision: number;
      readonly job: { readonly id: string; readonly number: number };
      readonly area: { readonly id: string; readonly name: string } | null;
      readonly actualCrew: { readonly id: string; readonly name: string } | null;
      readonly planned: {
        readonly startAt: string;
        readonly finishAt: string;
        readonly totalFloatMinutes: number;
        readonly freeFloatMinutes: number;
        readonly critical: boolean;
        readonly weatherUnknown: boolean;
        readonly crew: { readonly id: string; readonly name: string } | null;
        readonly segments: ReadonlyArray<{ readonly from: string; readonly to: string }>;
      } | null;
      readonly commitment: {
        readonly id: string;
        readonly startAt: string;
        readonly finishAt: string;
        readonly state: CommitmentState;
        readonly crew: { readonly id: string; readonly name: string } | null;
      } | null;
      readonly holdPoints: ReadonlyArray<{
        readonly id: string;
        readonly kind: HoldPointKind;
        readonly gate: Gate;
        readonly title: string;
        readonly state: HoldPointState;
      }>;
    }>;
    readonly crews: ReadonlyArray<{
      readonly id: string;
      readonly name: string;
      readonly trades: ReadonlyArray<string>;
    }>;
    readonly inspections: ReadonlyArray<{
      readonly id: string;
      readonly title: string;
      readonly state: InspectionState;
      readonly attempt: number;
      readonly visitFrom: string | null;
      readonly visitTo: string | null;
      readonly job: { readonly id: string };
      readonly phase: { readonly id: string };
      readonly plannedVisit: {
        readonly startAt: string;
        readonly finishAt: string;
        readonly requestBy: string;
      } | null;
    }>;
    readonly conflicts: ReadonlyArray<{
      readonly kind: string;
      readonly text: string;
      readonly phase: { readonly id: string } | null;
      readonly job: { readonly id: string; readonly number: number } | null;
    }>;
    readonly openProposal: {
      readonly id: string;
      readonly number: number;
      readonly cause: string;
      readonly createdAt: string;
      readonly revision: number;
      readonly differences: ReadonlyArray<{
        readonly startBefore: string | null;
        readonly startAfter: string;
        readonly finishBefore: string | null;
        readonly finishAfter: string;
        readonly reason: string;
        readonly phase: {
          readonly id: string;
          readonly name: string;
          readonly job: { readonly id: string; readonly number: number };
        };
        readonly crewBefore: { readonly id: string; readonly name: string } | null;
        readonly crewAfter: { readonly id: string; readonly name: string } | null;
      }>;
      readonly jobFinishes: ReadonlyArray<{
        readonly before: string | null;
        readonly after: string | null;
        readonly job: { readonly id: string; readonly number: number; readonly name: string };
      }>;
    } | null;
  };
};

export type BoardWeatherQueryVariables = Exact<{
  from: Scalars['DateTime']['input'];
  to: Scalars['DateTime']['input'];
}>;

export type BoardWeatherQuery = {
  readonly board: {
    readonly jobs: ReadonlyArray<{
      readonly id: string;
      readonly site: {
        readonly id: string;
        readonly forecast: {
          readonly id: string;
          readonly source: string;
          readonly issuedAt: string;
          readonly hours: ReadonlyArray<{
            readonly at: string;
            readonly temperatureF: number;
            readonly rainInches: number | null;
          }>;
        } | null;
      };
    }>;
  };
};

export type ReasonsQueryVariables = Exact<{
  phaseId: Scalars['ID']['input'];
}>;

export type ReasonsQuery = {
  readonly explain: ReadonlyArray<{
    readonly kind: string;
    readonly text: string;
    readonly at: string | null;
    readonly phase: {
      readonly id: string;
      readonly name: string;
      readonly job: { readonly id: string; readonly number: number };
    } | null;
  }>;
};

export type ChangesSinceQueryVariables = Exact<{
  changeNumber: Scalars['String']['input'];
}>;

export type ChangesSinceQuery = { readonly changesSince: ReadonlyArray<{ readonly id: string }> };

export type ChangedSubscriptionVariables = Exact<{ [key: string]: never }>;

export type ChangedSubscription = {
  readonly changed: { readonly changeNumber: string; readonly jobIds: ReadonlyArray<string> };
};

type RefusalFields_NotFound_Fragment = { readonly code: string; readonly message: string };

type RefusalFields_StaleRevision_Fragment = { readonly code: string; readonly message: string };

type RefusalFields_InvalidInput_Fragment = { readonly code: string; readonly message: string };

type RefusalFields_KeyReused_Fragment = { readonly code: string; readonly message: string };

type RefusalFields_HoldPointOpen_Fragment = { readonly code: string; readonly message: string };

type RefusalFields_LimitExceeded_Fragment = { readonly code: string; readonly message: string };

type RefusalFields_NeedsMissing_Fragment = { readonly code: string; readonly message: string };

export type RefusalFieldsFragment =
  | RefusalFields_NotFound_Fragment
  | RefusalFields_StaleRevision_Fragment
  | RefusalFields_InvalidInput_Fragment
  | RefusalFields_KeyReused_Fragment
  | RefusalFields_HoldPointOpen_Fragment
  | RefusalFields_LimitExceeded_Fragment
  | RefusalFields_NeedsMissing_Fragment;

export type StartPhaseMutationVariables = Exact<{
  input: StartPhaseInput;
}>;

export type StartPhaseMutation = {
  readonly outcome:
    | {
        readonly __typename: 'PhaseChanged';
        readonly phase: { readonly id: string; readonly name: string; readonly actualStart: string | null };
      }
    | { readonly __typename: 'HoldPointOpen'; readonly code: string; readonly message: string }
    | { readonly __typename: 'NotFound'; readonly code: string; readonly message: string }
    | { readonly __typename: 'StaleRevision'; readonly code: string; readonly message: string }
    | { readonly __typename: 'InvalidInput'; readonly code: string; readonly message: string }
    | { readonly __typename: 'KeyReused'; readonly code: string; readonly message: string };
};

export type FinishPhaseMutationVariables = Exact<{
  input: FinishPhaseInput;
}>;

export type FinishPhaseMutation = {
  readonly outcome:
    | {
        readonly __typename: 'PhaseChanged';
        readonly phase: { readonly id: string; readonly name: string; readonly actualFinish: string | null };
      }
    | { readonly __typename: 'HoldPointOpen'; readonly code: string; readonly message: string }
    | { readonly __typename: 'NotFound'; readonly code: string; readonly message: string }
    | { readonly __typename: 'StaleRevision'; readonly code: string; readonly message: string }
    | { readonly __typename: 'InvalidInput'; readonly code: string; readonly message: string }
    | { readonly __typename: 'KeyReused'; readonly code: string; readonly message: string };
};

export type PutBackPhaseMutationVariables = Exact<{
  input: PutBackPhaseInput;
}>;

export type PutBackPhaseMutation = {
  readonly outcome:
    | { readonly __typename: 'PhaseChanged' }
    | { readonly __typename: 'NotFound'; readonly code: string; readonly message: string }
    | { readonly __typename: 'StaleRevision'; readonly code: string; readonly message: string }
    | { readonly __typename: 'InvalidInput'; readonly code: string; readonly message: string }
    | { readonly __typename: 'KeyReused'; readonly code: string; readonly message: string };
};

export type ReleaseHoldPointMutationVariables = Exact<{
  input: ReleaseHoldPointInput;
}>;

export type ReleaseHoldPointMutation = {
  readonly outcome:
    | { readonly __typename: 'HoldPointChanged' }
    | {
        readonly __typename: 'LimitExceeded';
        readonly code: string;
        readonly message: string;
        readonly findings: ReadonlyArray<{
          readonly ok: boolean;
          readonly text: string;
          readonly caution: string | null;
        }>;
      }
    | { readonly __typename: 'NotFound'; readonly code: string; readonly message: string }
    | { readonly __typename: 'StaleRevision'; readonly code: string; readonly message: string }
    | { readonly __typename: 'InvalidInput'; readonly code: string; readonly message: string }
    | { readonly __typename: 'KeyReused'; readonly code: string; readonly message: string };
};

export type RefuseHoldPointMutationVariables = Exact<{
  input: RefuseHoldPointInput;
}>;

export type RefuseHoldPointMutation = {
  readonly outcome:
    | { readonly __typename: 'HoldPointChanged' }
    | { readonly __typename: 'NotFound'; readonly code: string; readonly message: string }
    | { readonly __typename: 'StaleRevision'; readonly code: string; readonly message: string }
    | { readonly __typename: 'InvalidInput'; readonly code: string; readonly message: string }
    | { readonly __typename: 'KeyReused'; readonly code: string; readonly message: string };
};

export type RecordCableReadingMutationVariables = Exact<{
  input: RecordCableReadingInput;
}>;

export type RecordCableReadingMutation = {
  readonly outcome:
    | {
        readonly __typename: 'HeatingSetChanged';
        readonly reading: {
          readonly id: string;
          readonly accepted: boolean;
          readonly findings: ReadonlyArray<{
            readonly ok: boolean;
            readonly text: string;
            readonly caution: string | null;
          }>;
        } | null;
      }
    | { readonly __typename: 'NotFound'; readonly code: string; readonly message: string }
    | { readonly __typename: 'StaleRevision'; readonly code: string; readonly message: string }
    | { readonly __typename: 'InvalidInput'; readonly code: string; readonly message: string }
    | { readonly __typename: 'KeyReused'; readonly code: string; readonly message: string };
};

export type CallWeatherHoldMutationVariables = Exact<{
  input: CallWeatherHoldInput;
}>;

export type CallWeatherHoldMutation = {
  readonly outcome:
    | { readonly __typename: 'WeatherHoldChanged' }
    | { readonly __typename: 'NotFound'; readonly code: string; readonly message: string }
    | { readonly __typename: 'StaleRevision'; readonly code: string; readonly message: string }
    | { readonly __typename: 'InvalidInput'; readonly code: string; readonly message: string }
    | { readonly __typename: 'KeyReused'; readonly code: string; readonly message: string };
};

export type LiftWeatherHoldMutationVariables = Exact<{
  input: LiftWeatherHoldInput;
}>;

export type LiftWeatherHoldMutation = {
  readonly outcome:
    | { readonly __typename: 'WeatherHoldChanged' }
    | { readonly __typename: 'NotFound'; readonly code: string; readonly message: string }
    | { readonly __typename: 'StaleRevision'; readonly code: string; readonly message: string }
    | { readonly __typename: 'InvalidInput'; readonly code: string; readonly message: string }
    | { readonly __typename: 'KeyReused'; readonly code: string; readonly message: string };
};

export type AcceptProposalMutationVariables = Exact<{
  input: AcceptProposalInput;
}>;

export type AcceptProposalMutation = {
  readonly outcome:
    | { readonly __typename: 'ProposalDecided' }
    | { readonly __typename: 'NotFound'; readonly code: string; readonly message: string }
    | { readonly __typename: 'StaleRevision'; readonly code: string; readonly message: string }
    | { readonly __typename: 'InvalidInput'; readonly code: string; readonly message: string }
    | { readonly __typename: 'KeyReused'; readonly code: string; readonly message: string };
};

export type DropProposalMutationVariables = Exact<{
  input: DropProposalInput;
}>;

export type DropProposalMutation = {
  readonly outcome:
    | { readonly __typename: 'ProposalDecided' }
    | { readonly __typename: 'NotFound'; readonly code: string; readonly message: string }
    | { readonly __typename: 'StaleRevision'; readonly code: string; readonly message: string }
    | { readonly __typename: 'InvalidInput'; readonly code: string; readonly message: string }
    | { readonly __typename: 'KeyReused'; readonly code: string; readonly message: string };
};

export type CommitJobMutationVariables = Exact<{
  input: CommitJobInput;
}>;

export type CommitJobMutation = {
  readonly outcome:
    | { readonly __typename: 'CommitmentChanged' }
    | { readonly __typename: 'NotFound'; readonly code: string; readonly message: string }
    | { readonly __typename: 'StaleRevision'; readonly code: string; readonly message: string }
    | { readonly __typename: 'InvalidInput'; readonly code: string; readonly message: string }
    | { readonly __typename: 'KeyReused'; readonly code: string; readonly message: string };
};

export type BookHookupMutationVariables = Exact<{
  input: BookHookupInput;
}>;

export type BookHookupMutation = {
  readonly outcome:
    | { readonly __typename: 'HookupChanged' }
    | { readonly __typename: 'NeedsMissing'; readonly code: string; readonly message: string }
    | { readonly __typename: 'NotFound'; readonly code: string; readonly message: string }
    | { readonly __typename: 'StaleRevision'; readonly code: string; readonly message: string }
    | { readonly __typename: 'InvalidInput'; readonly code: string; readonly message: string }
    | { readonly __typename: 'KeyReused'; readonly code: string; readonly message: string };
};

export type RecordHookupMutationVariables = Exact<{
  input: RecordHookupInput;
}>;

export type RecordHookupMutation = {
  readonly outcome:
    | { readonly __typename: 'HookupChanged' }
    | { readonly __typename: 'NeedsMissing'; readonly code: string; readonly message: string }
    | { readonly __typename: 'NotFound'; readonly code: string; readonly message: string }
    | { readonly __typename: 'StaleRevision'; readonly code: string; readonly message: string }
    | { readonly __typename: 'InvalidInput'; readonly code: string; readonly message: string }
    | { readonly __typename: 'KeyReused'; readonly code: string; readonly message: string };
};

export type HookupPageQueryVariables = Exact<{
  id: Scalars['ID']['input'];
}>;

export type HookupPageQuery = {
  readonly hookup: {
    readonly id: string;
    readonly state: HookupState;
    readonly coldLeadThrough: boolean;
    readonly coldLeadFreeInches: number | null;
    readonly sensorThrough: boolean;
    readonly leadsLabelled: boolean;
    readonly readyAt: string | null;
    readonly bookedFor: string | null;
    readonly doneAt: string | null;
    readonly energiseAllowedAt: string | null;
    readonly energisedAt: string | null;
    readonly cautions: ReadonlyArray<string>;
    readonly revision: number;
    readonly needs: ReadonlyArray<{ readonly id: string; readonly met: boolean; readonly text: string }>;
    readonly energisingNeeds: ReadonlyArray<{
      readonly id: string;
      readonly met: boolean;
      readonly text: string;
    }>;
    readonly circuit: {
      readonly watts: number;
      readonly volts: number;
      readonly amperes: number;
      readonly breakerAmperes: number | null;
      readonly text: string;
      readonly source: string;
    };
    readonly electrician: { readonly id: string; readonly name: string } | null;
    readonly job: {
      readonly id: string;
      readonly number: number;
      readonly name: string;
      readonly site: { readonly id: string; readonly address: string; readonly town: string };
    };
    readonly heatingSet: {
      readonly id: string;
      readonly name: string;
      readonly watts: number;
      readonly volts: number;
      readonly ohms: number;
      readonly labelTempF: number;
      readonly heatedFeet: number;
      readonly coldLeadFeet: number;
      readonly cureDays: number;
      readonly receivedAt: string | null;
      readonly areas: ReadonlyArray<{ readonly id: string; readonly name: string }>;
      readonly readings: ReadonlyArray<{
        readonly id: string;
        readonly stage: ReadingStage;
        readonly at: string;
        readonly ohms: number;
        readonly megaohms: number;
        readonly testVolts: number;
        readonly cableTempF: number;
        readonly accepted: boolean;
        readonly area: { readonly id: string; readonly name: string } | null;
        readonly findings: ReadonlyArray<{ readonly ok: boolean; readonly text: string }>;
      }>;
    };
  } | null;
};

export type HookupsQueryVariables = Exact<{ [key: string]: never }>;

export type HookupsQuery = {
  readonly hookups: {
    readonly edges: ReadonlyArray<{
      readonly node: {
        readonly id: string;
        readonly state: HookupState;
        readonly bookedFor: string | null;
        readonly job: { readonly id: string; readonly number: number; readonly name: string };
        readonly heatingSet: { readonly id: string; readonly name: string };
      };
    }>;
  };
};

export type JobPageQueryVariables = Exact<{
  number: Scalars['Int']['input'];
}>;

export type JobPageQuery = {
  readonly jobByNumber: {
    readonly id: string;
    readonly number: number;
    readonly name: string;
    readonly ownerName: string;
    readonly priority: number;
    readonly dueAt: string | null;
    readonly state: JobState;
    readonly plannedFinish: string | null;
    readonly committedFinish: string | null;
    readonly site: {
      readonly id: string;
      readonly address: string;
      readonly town: string;
      readonly frostDepthInches: number;
      readonly frostSource: string;
      readonly authority: {
        readonly id: string;
        readonly name: string;
        readonly noticeHours: number;
        readonly phone: string | null;
      } | null;
    };
    readonly areas: ReadonlyArray<{
      readonly id: string;
      readonly name: string;
      readonly kind: AreaKind;
      readonly heated: boolean;
    }>;
    readonly quantities: ReadonlyArray<{
      readonly key: string;
      readonly label: string;
      readonly value: number;
      readonly unit: string;
    }>;
    readonly phases: ReadonlyArray<{
      readonly id: string;
      readonly name: string;
      readonly hatch: string;
      readonly position: number;
      readonly durationKind: DurationKind;
      readonly state: PhaseState;
      readonly actualStart: string | null;
      readonly actualFinish: string | null;
      readonly note: string | null;
      readonly area: { readonly id: string; readonly name: string } | null;
      readonly actualCrew: { readonly id: string; readonly name: string } | null;
      readonly planned: {
        readonly startAt: string;
        readonly finishAt: string;
        readonly weatherUnknown: boolean;
        readonly crew: { readonly id: string; readonly name: string } | null;
        readonly reason: { readonly text: string };
      } | null;
      readonly commitment: {
        readonly id: string;
        readonly startAt: string;
        readonly finishAt: string;
        readonly state: CommitmentState;
      } | null;
    }>;
    readonly holdPoints: ReadonlyArray<{
      readonly caution: string | null;
      readonly reason: string | null;
      readonly decidedAt: string | null;
      readonly id: string;
      readonly kind: HoldPointKind;
      readonly gate: Gate;
      readonly title: string;
      readonly state: HoldPointState;
      readonly decidedBy: { readonly id: string; readonly name: string } | null;
      readonly phase: { readonly id: string; readonly name: string };
      readonly findings: ReadonlyArray<{
        readonly ok: boolean;
        readonly text: string;
        readonly mark: string;
        readonly source: string;
      }>;
    }>;
    readonly inspections: ReadonlyArray<{
      readonly id: string;
      readonly title: string;
      readonly attempt: number;
      readonly state: InspectionState;
      readonly visitFrom: string | null;
      readonly visitTo: string | null;
      readonly resultAt: string | null;
      readonly inspector: string | null;
      readonly note: string | null;
      readonly plannedVisit: { readonly startAt: string; readonly requestBy: string } | null;
    }>;
    readonly clearances: ReadonlyArray<{
      readonly id: string;
      readonly title: string;
      readonly kind: ClearanceKind;
      readonly state: ClearanceState;
      readonly expectedAt: string | null;
      readonly clearedAt: string | null;
      readonly lapsesAt: string | null;
      readonly reference: string | null;
    }>;
  } | null;
};

export type JobRecordsQueryVariables = Exact<{
  number: Scalars['Int']['input'];
}>;

export type JobRecordsQuery = {
  readonly jobByNumber: {
    readonly id: string;
    readonly heatingSets: ReadonlyArray<{
      readonly id: string;
      readonly name: string;
      readonly watts: number;
      readonly volts: number;
      readonly ohms: number;
      readonly labelTempF: number;
      readonly heatedFeet: number;
      readonly coldLeadFeet: number;
      readonly cureDays: number;
      readonly receivedAt: string | null;
      readonly areas: ReadonlyArray<{ readonly id: string; readonly name: string }>;
      readonly readings: ReadonlyArray<{
        readonly id: string;
        readonly stage: ReadingStage;
        readonly at: string;
        readonly ohms: number;
        readonly megaohms: number;
        readonly testVolts: number;
        readonly cableTempF: number;
        readonly accepted: boolean;
        readonly area: { readonly id: string; readonly name: string } | null;
        readonly findings: ReadonlyArray<{ readonly ok: boolean; readonly text: string }>;
      }>;
    }>;
    readonly placements: ReadonlyArray<{
      readonly id: string;
      readonly placedAt: string;
      readonly material: string;
      readonly placedTempF: number;
      readonly predictedReleaseAt: string | null;
      readonly phase: { readonly id: string; readonly name: string };
      readonly readings: ReadonlyArray<{
        readonly id: string;
        readonly at: string;
        readonly concreteF: number;
        readonly airF: number | null;
      }>;
      readonly strength: {
        readonly psi: number;
        readonly requiredPsi: number;
        readonly basis: StrengthBasis;
        readonly method: string;
        readonly caution: string;
        readonly releaseAt: string | null;
        readonly lowestF: number | null;
      };
    }>;
    readonly hookups: ReadonlyArray<{
      readonly id: string;
      readonly state: HookupState;
      readonly heatingSet: { readonly id: string; readonly name: string };
    }>;
  } | null;
};

export type HeatingSetFieldsFragment = {
  readonly id: string;
  readonly name: string;
  readonly watts: number;
  readonly volts: number;
  readonly ohms: number;
  readonly labelTempF: number;
  readonly heatedFeet: number;
  readonly coldLeadFeet: number;
  readonly cureDays: number;
  readonly receivedAt: string | null;
  readonly areas: ReadonlyArray<{ readonly id: string; readonly name: string }>;
  readonly readings: ReadonlyArray<{
    readonly id: string;
    readonly stage: ReadingStage;
    readonly at: string;
    readonly ohms: number;
    readonly megaohms: number;
    readonly testVolts: number;
    readonly cableTempF: number;
    readonly accepted: boolean;
    readonly area: { readonly id: string; readonly name: string } | null;
    readonly findings: ReadonlyArray<{ readonly ok: boolean; readonly text: string }>;
  }>;
};

export type JobJournalQueryVariables = Exact<{
  jobId: Scalars['ID']['input'];
}>;

export type JobJournalQuery = {
  readonly journal: {
    readonly edges: ReadonlyArray<{
      readonly node: {
        readonly id: string;
        readonly at: string;
        readonly action: string;
        readonly reason: string | null;
        readonly person: { readonly id: string; readonly name: string } | null;
      };
    }>;
    readonly pageInfo: { readonly hasNextPage: boolean };
  };
};

export type PersonFieldsFragment = {
  readonly id: string;
  readonly name: string;
  readonly role: Role;
  readonly zone: string;
};

export type SessionQueryVariables = Exact<{ [key: string]: never }>;

export type SessionQuery = {
  readonly me: {
    readonly id: string;
    readonly name: string;
    readonly role: Role;
    readonly zone: string;
  } | null;
};

export type CompanyNameQueryVariables = Exact<{ [key: string]: never }>;

export type CompanyNameQuery = {
  readonly company: {
    readonly id: string;
    readonly name: string;
    readonly zone: string;
    readonly freezeDays: number;
  };
};

export type DemoPeopleQueryVariables = Exact<{ [key: string]: never }>;

export type DemoPeopleQuery = {
  readonly demoPeople: ReadonlyArray<{
    readonly id: string;
    readonly name: string;
    readonly role: Role;
    readonly zone: string;
  }>;
};

export type SignInMutationVariables = Exact<{
  input: SignInInput;
}>;

export type SignInMutation = {
  readonly signIn: {
    readonly person: {
      readonly id: string;
      readonly name: string;
      readonly role: Role;
      readonly zone: string;
    };
  };
};

export type SignInToDemoMutationVariables = Exact<{
  personId: Scalars['ID']['input'];
}>;

export type SignInToDemoMutation = {
  readonly signInToDemo: {
    readonly person: {
      readonly id: string;
      readonly name: string;
      readonly role: Role;
      readonly zone: string;
    };
  };
};

export type SignOutMutationVariables = Exact<{ [key: string]: never }>;

export type SignOutMutation = { readonly signOut: boolean };

export type ItemFieldsFragment = {
  readonly id: string;
  readonly label: string;
  readonly unit: string | null;
  readonly many: boolean;
  readonly limitText: string;
  readonly required: boolean;
  readonly mark: string;
  readonly source: string;
};

export type SiteHoldPointFragment = {
  readonly id: string;
  readonly kind: HoldPointKind;
  readonly gate: Gate;
  readonly title: string;
  readonly state: HoldPointState;
  readonly caution: string | null;
  readonly waivable: boolean;
  readonly revision: number;
  readonly readingStage: ReadingStage | null;
  readonly heatingSet: { readonly id: string; readonly name: string } | null;
  readonly items: ReadonlyArray<{
    readonly id: string;
    readonly label: string;
    readonly unit: string | null;
    readonly many: boolean;
    readonly limitText: string;
    readonly required: boolean;
    readonly mark: string;
    readonly source: string;
  }>;
};

export type TodayQueryVariables = Exact<{
  from: Scalars['DateTime']['input'];
  to: Scalars['DateTime']['input'];
}>;

export type TodayQuery = {
  readonly board: { readonly now: string };
  readonly today: ReadonlyArray<{
    readonly id: string;
    readonly name: string;
    readonly hatch: string;
    readonly state: PhaseState;
    readonly durationKind: DurationKind;
    readonly actualStart: string | null;
    readonly actualFinish: string | null;
    readonly revision: number;
    readonly job: {
      readonly id: string;
      readonly number: number;
      readonly name: string;
      readonly site: {
        readonly id: string;
        readonly address: string;
        readonly town: string;
        readonly weatherHolds: ReadonlyArray<{
          readonly id: string;
          readonly cause: HoldCause;
          readonly startsAt: string;
          readonly endsAt: string | null;
          readonly reason: string;
          readonly revision: number;
          readonly phase: { readonly id: string } | null;
        }>;
      };
    };
    readonly area: { readonly id: string; readonly name: string } | null;
    readonly planned: {
      readonly startAt: string;
      readonly finishAt: string;
      readonly weatherUnknown: boolean;
      readonly crew: { readonly id: string; readonly name: string } | null;
    } | null;
    readonly holdPoints: ReadonlyArray<{
      readonly id: string;
      readonly kind: HoldPointKind;
      readonly gate: Gate;
      readonly title: string;
      readonly state: HoldPointState;
      readonly caution: string | null;
      readonly waivable: boolean;
      readonly revision: number;
      readonly readingStage: ReadingStage | null;
      readonly heatingSet: { readonly id: string; readonly name: string } | null;
      readonly items: ReadonlyArray<{
        readonly id: string;
        readonly label: string;
        readonly unit: string | null;
        readonly many: boolean;
        readonly limitText: string;
        readonly required: boolean;
        readonly mark: string;
        readonly source: string;
      }>;
    }>;
    readonly obstacles: ReadonlyArray<{
      readonly code: string;
      readonly message: string;
      readonly liftedBy: Role | null;
      readonly holdPoint: { readonly id: string } | null;
    }>;
  }>;
};

export class TypedDocumentString<TResult, TVariables>
  extends String
  implements DocumentTypeDecoration<TResult, TVariables>
{
  __apiType?: NonNullable<DocumentTypeDecoration<TResult, TVariables>['__apiType']>;
  private value: string;
  public __meta__?: Record<string, any> | undefined;

  constructor(value: string, __meta__?: Record<string, any> | undefined) {
    super(value);
    this.value = value;
    this.__meta__ = __meta__;
  }

  override toString(): string & DocumentTypeDecoration<TResult, TVariables> {
    return this.value;
  }
}
export const GateFieldsFragmentDoc = new TypedDocumentString(
  `
    fragment GateFields on HoldPoint {
  id
  kind
  gate
  title
  state
}
    `,
  { fragmentName: 'GateFields' },
) as unknown as TypedDocumentString<GateFieldsFragment, unknown>;
export const BoardPhaseFragmentDoc = new TypedDocumentString(
  `
    fragment BoardPhase on Phase {
  id
  name
  hatch
  trade
  position
  durationKind
  state
  pinnedStart
  actualStart
  actualFinish
  revision
  job {
    id
    number
  }
  area {
    id
    name
  }
  actualCrew {
    id
    name
  }
  planned {
    startAt
    finishAt
    totalFloatMinutes
    freeFloatMinutes
    critical
    weatherUnknown
    crew {
      id
      name
    }
    segments {
      from
      to
    }
  }
  commitment {
    id
    startAt
    finishAt
    state
    crew {
      id
      name
    }
  }
  holdPoints {
    ...GateFields
  }
}
    fragment GateFields on HoldPoint {
  id
  kind
  gate
  title
  state
}`,
  { fragmentName: 'BoardPhase' },
) as unknown as TypedDocumentString<BoardPhaseFragment, unknown>;
export const BoardJobFragmentDoc = new TypedDocumentString(
  `
    fragment BoardJob on Job {
  id
  number
  name
  state
  priority
  dueAt
  plannedFinish
  committedFinish
  site {
    id
    address
    town
    weatherHolds(activeOnly: true) {
      id
      cause
      startsAt
      endsAt
      reason
      phase {
        id
      }
    }
  }
}
    `,
  { fragmentName: 'BoardJob' },
) as unknown as TypedDocumentString<BoardJobFragment, unknown>;
export const BoardProposalFragmentDoc = new TypedDocumentString(
  `
    fragment BoardProposal on Proposal {
  id
  number
  cause
  createdAt
  revision
  differences {
    startBefore
    startAfter
    finishBefore
    finishAfter
    reason
    phase {
      id
      name
      job {
        id
        number
      }
    }
    crewBefore {
      id
      name
    }
    crewAfter {
      id
      name
    }
  }
  jobFinishes {
    before
    after
    job {
      id
      number
      name
    }
  }
}
    `,
  { fragmentName: 'BoardProposal' },
) as unknown as TypedDocumentString<BoardProposalFragment, unknown>;
export const RefusalFieldsFragmentDoc = new TypedDocumentString(
  `
    fragment RefusalFields on Refusal {
  code
  message
}
    `,
  { fragmentName: 'RefusalFields' },
) as unknown as TypedDocumentString<RefusalFieldsFragment, unknown>;
export const HeatingSetFieldsFragmentDoc = new TypedDocumentString(
  `
    fragment HeatingSetFields on HeatingSet {
  id
  name
  watts
  volts
  ohms
  labelTempF
  heatedFeet
  coldLeadFeet
  cureDays
  receivedAt
  areas {
    id
    name
  }
  readings {
    id
    stage
    at
    ohms
    megaohms
    testVolts
    cableTempF
    accepted
    area {
      id
      name
    }
    findings {
      ok
      text
    }
  }
}
    `,
  { fragmentName: 'HeatingSetFields' },
) as unknown as TypedDocumentString<HeatingSetFieldsFragment, unknown>;
export const PersonFieldsFragmentDoc = new TypedDocumentString(
  `
    fragment PersonFields on Person {
  id
  name
  role
  zone
}
    `,
  { fragmentName: 'PersonFields' },
) as unknown as TypedDocumentString<PersonFieldsFragment, unknown>;
export const ItemFieldsFragmentDoc = new TypedDocumentString(
  `
    fragment ItemFields on HoldPointItem {
  id
  label
  unit
  many
  limitText
  required
  mark
  source
}
    `,
  { fragmentName: 'ItemFields' },
) as unknown as TypedDocumentString<ItemFieldsFragment, unknown>;
export const SiteHoldPointFragmentDoc = new TypedDocumentString(
  `
    fragment SiteHoldPoint on HoldPoint {
  id
  kind
  gate
  title
  state
  caution
  waivable
  revision
  readingStage
  heatingSet {
    id
    name
  }
  items {
    ...ItemFields
  }
}
    fragment ItemFields on HoldPointItem {
  id
  label
  unit
  many
  limitText
  required
  mark
  source
}`,
  { fragmentName: 'SiteHoldPoint' },
) as unknown as TypedDocumentString<SiteHoldPointFragment, unknown>;
export const BoardDocument = new TypedDocumentString(`
    query Board($from: DateTime!, $to: DateTime!) {
  board(from: $from, to: $to) {
    planNumber
    changeNumber
    now
    jobs {
      ...BoardJob
    }
    phases {
      ...BoardPhase
    }
    crews {
      id
      name
      trades
    }
    inspections {
      id
      title
      state
      attempt
      visitFrom
      visitTo
      job {
        id
      }
      phase {
        id
      }
      plannedVisit {
        startAt
        finishAt
        requestBy
      }
    }
    conflicts {
      kind
      text
      phase {
        id
      }
      job {
        id
        number
      }
    }
    openProposal {
      ...BoardProposal
    }
  }
}
    fragment GateFields on HoldPoint {
  id
  kind
  gate
  title
  state
}
fragment BoardPhase on Phase {
  id
  name
  hatch
  trade
  position
  durationKind
  state
  pinnedStart
  actualStart
  actualFinish
  revision
  job {
    id
    number
  }
  area {
    id
    name
  }
  actualCrew {
    id
    name
  }
  planned {
    startAt
    finishAt
    totalFloatMinutes
    freeFloatMinutes
    critical
    weatherUnknown
    crew {
      id
      name
    }
    segments {
      from
      to
    }
  }
  commitment {
    id
    startAt
    finishAt
    state
    crew {
      id
      name
    }
  }
  holdPoints {
    ...GateFields
  }
}
fragment BoardJob on Job {
  id
  number
  name
  state
  priority
  dueAt
  plannedFinish
  committedFinish
  site {
    id
    address
    town
    weatherHolds(activeOnly: true) {
      id
      cause
      startsAt
      endsAt
      reason
      phase {
        id
      }
    }
  }
}
fragment BoardProposal on Proposal {
  id
  number
  cause
  createdAt
  revision
  differences {
    startBefore
    startAfter
    finishBefore
    finishAfter
    reason
    phase {
      id
      name
      job {
        id
        number
      }
    }
    crewBefore {
      id
      name
    }
    crewAfter {
      id
      name
    }
  }
  jobFinishes {
    before
    after
    job {
      id
      number
      name
    }
  }
}`) as unknown as TypedDocumentString<BoardQuery, BoardQueryVariables>;
export const BoardWeatherDocument = new TypedDocumentString(`
    query BoardWeather($from: DateTime!, $to: DateTime!) {
  board(from: $from, to: $to) {
    jobs {
      id
      site {
        id
        forecast {
          id
          source
          issuedAt
          hours(from: $from, to: $to) {
            at
            temperatureF
            rainInches
          }
        }
      }
    }
  }
}
    `) as unknown as TypedDocumentString<BoardWeatherQuery, BoardWeatherQueryVariables>;
export const ReasonsDocument = new TypedDocumentString(`
    query Reasons($phaseId: ID!) {
  explain(phaseId: $phaseId) {
    kind
    text
    at
    phase {
      id
      name
      job {
        id
        number
      }
    }
  }
}
    `) as unknown as TypedDocumentString<ReasonsQuery, ReasonsQueryVariables>;
export const ChangesSinceDocument = new TypedDocumentString(`
    query ChangesSince($changeNumber: String!) {
  changesSince(changeNumber: $changeNumber) {
    id
  }
}
    `) as unknown as TypedDocumentString<ChangesSinceQuery, ChangesSinceQueryVariables>;
export const ChangedDocument = new TypedDocumentString(`
    subscription Changed {
  changed {
    changeNumber
    jobIds
  }
}
    `) as unknown as TypedDocumentString<ChangedSubscription, ChangedSubscriptionVariables>;
export const StartPhaseDocument = new TypedDocumentString(`
    mutation StartPhase($input: StartPhaseInput!) {
  outcome: startPhase(input: $input) {
    __typename
    ...RefusalFields
    ... on PhaseChanged {
      phase {
        id
        name
        actualStart
      }
    }
  }
}
    fragment RefusalFields on Refusal {
  code
  message
}`) as unknown as TypedDocumentString<StartPhaseMutation, StartPhaseMutationVariables>;
export const FinishPhaseDocument = new TypedDocumentString(`
    mutation FinishPhase($input: FinishPhaseInput!) {
  outcome: finishPhase(input: $input) {
    __typename
    ...RefusalFields
    ... on PhaseChanged {
      phase {
        id
        name
        actualFinish
      }
    }
  }
}
    fragment RefusalFields on Refusal {
  code
  message
}`) as unknown as TypedDocumentString<FinishPhaseMutation, FinishPhaseMutationVariables>;
export const PutBackPhaseDocument = new TypedDocumentString(`
    mutation PutBackPhase($input: PutBackPhaseInput!) {
  outcome: putBackPhase(input: $input) {
    __typename
    ...RefusalFields
  }
}
    fragment RefusalFields on Refusal {
  code
  message
}`) as unknown as TypedDocumentString<PutBackPhaseMutation, PutBackPhaseMutationVariables>;
export const ReleaseHoldPointDocument = new TypedDocumentString(`
    mutation ReleaseHoldPoint($input: ReleaseHoldPointInput!) {
  outcome: releaseHoldPoint(input: $input) {
    __typename
    ...RefusalFields
    ... on LimitExceeded {
      findings {
        ok
        text
        caution
      }
    }
  }
}
    fragment RefusalFields on Refusal {
  code
  message
}`) as unknown as TypedDocumentString<ReleaseHoldPointMutation, ReleaseHoldPointMutationVariables>;
export const RefuseHoldPointDocument = new TypedDocumentString(`
    mutation RefuseHoldPoint($input: RefuseHoldPointInput!) {
  outcome: refuseHoldPoint(input: $input) {
    __typename
    ...RefusalFields
  }
}
    fragment RefusalFields on Refusal {
  code
  message
}`) as unknown as TypedDocumentString<RefuseHoldPointMutation, RefuseHoldPointMutationVariables>;
export const RecordCableReadingDocument = new TypedDocumentString(`
    mutation RecordCableReading($input: RecordCableReadingInput!) {
  outcome: recordCableReading(input: $input) {
    __typename
    ...RefusalFields
    ... on HeatingSetChanged {
      reading {
        id
        accepted
        findings {
          ok
          text
          caution
        }
      }
    }
  }
}
    fragment RefusalFields on Refusal {
  code
  message
}`) as unknown as TypedDocumentString<RecordCableReadingMutation, RecordCableReadingMutationVariables>;
export const CallWeatherHoldDocument = new TypedDocumentString(`
    mutation CallWeatherHold($input: CallWeatherHoldInput!) {
  outcome: callWeatherHold(input: $input) {
    __typename
    ...RefusalFields
  }
}
    fragment RefusalFields on Refusal {
  code
  message
}`) as unknown as TypedDocumentString<CallWeatherHoldMutation, CallWeatherHoldMutationVariables>;
export const LiftWeatherHoldDocument = new TypedDocumentString(`
    mutation LiftWeatherHold($input: LiftWeatherHoldInput!) {
  outcome: liftWeatherHold(input: $input) {
    __typename
    ...RefusalFields
  }
}
    fragment RefusalFields on Refusal {
  code
  message
}`) as unknown as TypedDocumentString<LiftWeatherHoldMutation, LiftWeatherHoldMutationVariables>;
export const AcceptProposalDocument = new TypedDocumentString(`
    mutation AcceptProposal($input: AcceptProposalInput!) {
  outcome: acceptProposal(input: $input) {
    __typename
    ...RefusalFields
  }
}
    fragment RefusalFields on Refusal {
  code
  message
}`) as unknown as TypedDocumentString<AcceptProposalMutation, AcceptProposalMutationVariables>;
export const DropProposalDocument = new TypedDocumentString(`
    mutation DropProposal($input: DropProposalInput!) {
  outcome: dropProposal(input: $input) {
    __typename
    ...RefusalFields
  }
}
    fragment RefusalFields on Refusal {
  code
  message
}`) as unknown as TypedDocumentString<DropProposalMutation, DropProposalMutationVariables>;
export const CommitJobDocument = new TypedDocumentString(`
    mutation CommitJob($input: CommitJobInput!) {
  outcome: commitJob(input: $input) {
    __typename
    ...RefusalFields
  }
}
    fragment RefusalFields on Refusal {
  code
  message
}`) as unknown as TypedDocumentString<CommitJobMutation, CommitJobMutationVariables>;
export const BookHookupDocument = new TypedDocumentString(`
    mutation BookHookup($input: BookHookupInput!) {
  outcome: bookHookup(input: $input) {
    __typename
    ...RefusalFields
  }
}
    fragment RefusalFields on Refusal {
  code
  message
}`) as unknown as TypedDocumentString<BookHookupMutation, BookHookupMutationVariables>;
export const RecordHookupDocument = new TypedDocumentString(`
    mutation RecordHookup($input: RecordHookupInput!) {
  outcome: recordHookup(input: $input) {
    __typename
    ...RefusalFields
  }
}
    fragment RefusalFields on Refusal {
  code
  message
}`) as unknown as TypedDocumentString<RecordHookupMutation, RecordHookupMutationVariables>;
export const HookupPageDocument = new TypedDocumentString(`
    query HookupPage($id: ID!) {
  hookup(id: $id) {
    id
    state
    coldLeadThrough
    coldLeadFreeInches
    sensorThrough
    leadsLabelled
    readyAt
    bookedFor
    doneAt
    energiseAllowedAt
    energisedAt
    cautions
    revision
    needs {
      id
      met
      text
    }
    energisingNeeds {
      id
      met
      text
    }
    circuit {
      watts
      volts
      amperes
      breakerAmperes
      text
      source
    }
    electrician {
      id
      name
    }
    job {
      id
      number
      name
      site {
        id
        address
        town
      }
    }
    heatingSet {
      ...HeatingSetFields
    }
  }
}
    fragment HeatingSetFields on HeatingSet {
  id
  name
  watts
  volts
  ohms
  labelTempF
  heatedFeet
  coldLeadFeet
  cureDays
  receivedAt
  areas {
    id
    name
  }
  readings {
    id
    stage
    at
    ohms
    megaohms
    testVolts
    cableTempF
    accepted
    area {
      id
      name
    }
    findings {
      ok
      text
    }
  }
}`) as unknown as TypedDocumentString<HookupPageQuery, HookupPageQueryVariables>;
export const HookupsDocument = new TypedDocumentString(`
    query Hookups {
  hookups(first: 100) {
    edges {
      node {
        id
        state
        bookedFor
        job {
          id
          number
          name
        }
        heatingSet {
          id
          name
        }
      }
    }
  }
}
    `) as unknown as TypedDocumentString<HookupsQuery, HookupsQueryVariables>;
export const JobPageDocument = new TypedDocumentString(`
    query JobPage($number: Int!) {
  jobByNumber(number: $number) {
    id
    number
    name
    ownerName
    priority
    dueAt
    state
    plannedFinish
    committedFinish
    site {
      id
      address
      town
      frostDepthInches
      frostSource
      authority {
        id
        name
        noticeHours
        phone
      }
    }
    areas {
      id
      name
      kind
      heated
    }
    quantities {
      key
      label
      value
      unit
    }
    phases {
      id
      name
      hatch
      position
      durationKind
      state
      actualStart
      actualFinish
      note
      area {
        id
        name
      }
      actualCrew {
        id
        name
      }
      planned {
        startAt
        finishAt
        weatherUnknown
        crew {
          id
          name
        }
        reason {
          text
        }
      }
      commitment {
        id
        startAt
        finishAt
        state
      }
    }
    holdPoints {
      ...GateFields
      caution
      reason
      decidedAt
      decidedBy {
        id
        name
      }
      phase {
        id
        name
      }
      findings {
        ok
        text
        mark
        source
      }
    }
    inspections {
      id
      title
      attempt
      state
      visitFrom
      visitTo
      resultAt
      inspector
      note
      plannedVisit {
        startAt
        requestBy
      }
    }
    clearances {
      id
      title
      kind
      state
      expectedAt
      clearedAt
      lapsesAt
      reference
    }
  }
}
    fragment GateFields on HoldPoint {
  id
  kind
  gate
  title
  state
}`) as unknown as TypedDocumentString<JobPageQuery, JobPageQueryVariables>;
export const JobRecordsDocument = new TypedDocumentString(`
    query JobRecords($number: Int!) {
  jobByNumber(number: $number) {
    id
    heatingSets {
      ...HeatingSetFields
    }
    placements {
      id
      placedAt
      material
      placedTempF
      predictedReleaseAt
      phase {
        id
        name
      }
      readings {
        id
        at
        concreteF
        airF
      }
      strength {
        psi
        requiredPsi
        basis
        method
        caution
        releaseAt
        lowestF
      }
    }
    hookups {
      id
      state
      heatingSet {
        id
        name
      }
    }
  }
}
    fragment HeatingSetFields on HeatingSet {
  id
  name
  watts
  volts
  ohms
  labelTempF
  heatedFeet
  coldLeadFeet
  cureDays
  receivedAt
  areas {
    id
    name
  }
  readings {
    id
    stage
    at
    ohms
    megaohms
    testVolts
    cableTempF
    accepted
    area {
      id
      name
    }
    findings {
      ok
      text
    }
  }
}`) as unknown as TypedDocumentString<JobRecordsQuery, JobRecordsQueryVariables>;
export const JobJournalDocument = new TypedDocumentString(`
    query JobJournal($jobId: ID!) {
  journal(jobId: $jobId, first: 100) {
    edges {
      node {
        id
        at
        action
        reason
        person {
          id
          name
        }
      }
    }
    pageInfo {
      hasNextPage
    }
  }
}
    `) as unknown as TypedDocumentString<JobJournalQuery, JobJournalQueryVariables>;
export const SessionDocument = new TypedDocumentString(`
    query Session {
  me {
    ...PersonFields
  }
}
    fragment PersonFields on Person {
  id
  name
  role
  zone
}`) as unknown as TypedDocumentString<SessionQuery, SessionQueryVariables>;
export const CompanyNameDocument = new TypedDocumentString(`
    query CompanyName {
  company {
    id
    name
    zone
    freezeDays
  }
}
    `) as unknown as TypedDocumentString<CompanyNameQuery, CompanyNameQueryVariables>;
export const DemoPeopleDocument = new TypedDocumentString(`
    query DemoPeople {
  demoPeople {
    ...PersonFields
  }
}
    fragment PersonFields on Person {
  id
  name
  role
  zone
}`) as unknown as TypedDocumentString<DemoPeopleQuery, DemoPeopleQueryVariables>;
export const SignInDocument = new TypedDocumentString(`
    mutation SignIn($input: SignInInput!) {
  signIn(input: $input) {
    person {
      ...PersonFields
    }
  }
}
    fragment PersonFields on Person {
  id
  name
  role
  zone
}`) as unknown as TypedDocumentString<SignInMutation, SignInMutationVariables>;
export const SignInToDemoDocument = new TypedDocumentString(`
    mutation SignInToDemo($personId: ID!) {
  signInToDemo(personId: $personId) {
    person {
      ...PersonFields
    }
  }
}
    fragment PersonFields on Person {
  id
  name
  role
  zone
}`) as unknown as TypedDocumentString<SignInToDemoMutation, SignInToDemoMutationVariables>;
export const SignOutDocument = new TypedDocumentString(`
    mutation SignOut {
  signOut
}
    `) as unknown as TypedDocumentString<SignOutMutation, SignOutMutationVariables>;
export const TodayDocument = new TypedDocumentString(`
    query Today($from: DateTime!, $to: DateTime!) {
  board(from: $from, to: $to) {
    now
  }
  today {
    id
    name
    hatch
    state
    durationKind
    actualStart
    actualFinish
    revision
    job {
      id
      number
      name
      site {
        id
        address
        town
        weatherHolds(activeOnly: true) {
          id
          cause
          startsAt
          endsAt
          reason
          revision
          phase {
            id
          }
        }
      }
    }
    area {
      id
      name
    }
    planned {
      startAt
      finishAt
      weatherUnknown
      crew {
        id
        name
      }
    }
    holdPoints {
      ...SiteHoldPoint
    }
    obstacles {
      code
      message
      liftedBy
      holdPoint {
        id
      }
    }
  }
}
    fragment ItemFields on HoldPointItem {
  id
  label
  unit
  many
  limitText
  required
  mark
  source
}
fragment SiteHoldPoint on HoldPoint {
  id
  kind
  gate
  title
  state
  caution
  waivable
  revision
  readingStage
  heatingSet {
    id
    name
  }
  items {
    ...ItemFields
  }
}`) as unknown as TypedDocumentString<TodayQuery, TodayQueryVariables>;
