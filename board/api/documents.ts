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
  /** A date-time string at UTC, such as 2019-12-03T09:54:33Z, compliant with the date-time format. */
  DateTime: { input: string; output: string };
};

/** A proposal to accept: the commitments move as it says. */
export type AcceptProposalInput = {
  /** A new UUID for each change; repeat it to retry the same change. A repeated key has one effect and one answer. */
  readonly clientKey: Scalars['ID']['input'];
  /** Sent by an outbox, which repeats by itself and tells times by its own clock. A refusal is then kept under the key as well, so a late copy stays refused; a time up to five minutes ahead counts as now. */
  readonly fromOutbox?: InputMaybe<Scalars['Boolean']['input']>;
  /** The proposal. */
  readonly proposalId: Scalars['ID']['input'];
  /** Revision that was read; checked when given. */
  readonly revision?: InputMaybe<Scalars['Int']['input']>;
};

/** A new dependency between two phases of a job. */
export type AddLinkInput = {
  /** A new UUID for each change; repeat it to retry the same change. A repeated key has one effect and one answer. */
  readonly clientKey: Scalars['ID']['input'];
  /** The phase that goes before. */
  readonly fromId: Scalars['ID']['input'];
  /** Sent by an outbox, which repeats by itself and tells times by its own clock. A refusal is then kept under the key as well, so a late copy stays refused; a time up to five minutes ahead counts as now. */
  readonly fromOutbox?: InputMaybe<Scalars['Boolean']['input']>;
  /** Which ends it ties. */
  readonly kind: LinkKind;
  /** How the lag is counted; elapsed when left out. */
  readonly lagIn?: InputMaybe<LagIn>;
  /** Minutes between the two ends, a multiple of 15; 0 when left out. */
  readonly lagMinutes?: InputMaybe<Scalars['Int']['input']>;
  /** The phase that waits. */
  readonly toId: Scalars['ID']['input'];
};

/** A phase that the template does not have. */
export type AddPhaseInput = {
  /** Phases that must be finished before it starts. */
  readonly after?: InputMaybe<ReadonlyArray<Scalars['ID']['input']>>;
  /** Area it belongs to; the whole job when left out. */
  readonly areaId?: InputMaybe<Scalars['ID']['input']>;
  /** Phases that start only when it is finished. */
  readonly before?: InputMaybe<ReadonlyArray<Scalars['ID']['input']>>;
  /** A new UUID for each change; repeat it to retry the same change. A repeated key has one effect and one answer. */
  readonly clientKey: Scalars['ID']['input'];
  /** Whether it may pause. */
  readonly continuity: Continuity;
  /** How the duration is counted. */
  readonly durationKind: DurationKind;
  /** Duration in minutes, a multiple of 15. */
  readonly durationMinutes: Scalars['Int']['input'];
  /** Sent by an outbox, which repeats by itself and tells times by its own clock. A refusal is then kept under the key as well, so a late copy stays refused; a time up to five minutes ahead counts as now. */
  readonly fromOutbox?: InputMaybe<Scalars['Boolean']['input']>;
  /** Hatch: earth, concrete, masonry, mesh, mortar, stone, sealant, electrical, none. */
  readonly hatch: Scalars['String']['input'];
  /** The job. */
  readonly jobId: Scalars['ID']['input'];
  /** Key, unique in the job: lower-case letters, digits, hyphens and dots. */
  readonly key: Scalars['String']['input'];
  /** Kind of work, such as drain. */
  readonly kind: Scalars['String']['input'];
  /** Name in the words of the trade. */
  readonly name: Scalars['String']['input'];
  /** Trade that does it: labour, mason, cable, electrician, office; none for a wait. */
  readonly trade?: InputMaybe<Scalars['String']['input']>;
  /** Key of the weather limits that close it; none when left out. */
  readonly weatherLimitKey?: InputMaybe<Scalars['String']['input']>;
};

/** Kind of a surface of the entry. */
export type AreaKind =
  /** A flight of steps. */
  | 'flight'
  /** The landing at the door. */
  | 'landing'
  /** A walk. */
  | 'walk';

/** A crew that must do the phase, or none in particular. */
export type AssignCrewInput = {
  /** A new UUID for each change; repeat it to retry the same change. A repeated key has one effect and one answer. */
  readonly clientKey: Scalars['ID']['input'];
  /** The crew; null lets the plan choose among its trade. */
  readonly crewId?: InputMaybe<Scalars['ID']['input']>;
  /** Sent by an outbox, which repeats by itself and tells times by its own clock. A refusal is then kept under the key as well, so a late copy stays refused; a time up to five minutes ahead counts as now. */
  readonly fromOutbox?: InputMaybe<Scalars['Boolean']['input']>;
  /** The phase. */
  readonly phaseId: Scalars['ID']['input'];
  /** Revision of the phase that was read; checked when given. */
  readonly revision?: InputMaybe<Scalars['Int']['input']>;
};

/** Books the day of a hookup. */
export type BookHookupInput = {
  /** A new UUID for each change; repeat it to retry the same change. A repeated key has one effect and one answer. */
  readonly clientKey: Scalars['ID']['input'];
  /** Day, or begin, of the visit. */
  readonly day: Scalars['DateTime']['input'];
  /** Sent by an outbox, which repeats by itself and tells times by its own clock. A refusal is then kept under the key as well, so a late copy stays refused; a time up to five minutes ahead counts as now. */
  readonly fromOutbox?: InputMaybe<Scalars['Boolean']['input']>;
  /** The hookup. */
  readonly hookupId: Scalars['ID']['input'];
  /** Revision it was read at; checked when given. */
  readonly revision?: InputMaybe<Scalars['Int']['input']>;
};

/** Books the window that the authority gave. */
export type BookInspectionInput = {
  /** A new UUID for each change; repeat it to retry the same change. A repeated key has one effect and one answer. */
  readonly clientKey: Scalars['ID']['input'];
  /** Sent by an outbox, which repeats by itself and tells times by its own clock. A refusal is then kept under the key as well, so a late copy stays refused; a time up to five minutes ahead counts as now. */
  readonly fromOutbox?: InputMaybe<Scalars['Boolean']['input']>;
  /** The inspection. */
  readonly inspectionId: Scalars['ID']['input'];
  /** Revision it was read at; checked when given. */
  readonly revision?: InputMaybe<Scalars['Int']['input']>;
  /** Begin of the window. */
  readonly visitFrom: Scalars['DateTime']['input'];
  /** End of the window. */
  readonly visitTo: Scalars['DateTime']['input'];
};

/** A stretch in which a site, or one phase of it, may not be worked on. */
export type CallWeatherHoldInput = {
  /** A new UUID for each change; repeat it to retry the same change. A repeated key has one effect and one answer. */
  readonly clientKey: Scalars['ID']['input'];
  /** When it ends; left out while nobody knows. */
  readonly endsAt?: InputMaybe<Scalars['DateTime']['input']>;
  /** Sent by an outbox, which repeats by itself and tells times by its own clock. A refusal is then kept under the key as well, so a late copy stays refused; a time up to five minutes ahead counts as now. */
  readonly fromOutbox?: InputMaybe<Scalars['Boolean']['input']>;
  /** The one phase that is held; left out for the whole site. */
  readonly phaseId?: InputMaybe<Scalars['ID']['input']>;
  /** Why. */
  readonly reason: Scalars['String']['input'];
  /** Site that is held. */
  readonly siteId: Scalars['ID']['input'];
  /** When it begins; left out for now. */
  readonly startsAt?: InputMaybe<Scalars['DateTime']['input']>;
};

/** A job that is given up. */
export type CancelJobInput = {
  /** A new UUID for each change; repeat it to retry the same change. A repeated key has one effect and one answer. */
  readonly clientKey: Scalars['ID']['input'];
  /** Sent by an outbox, which repeats by itself and tells times by its own clock. A refusal is then kept under the key as well, so a late copy stays refused; a time up to five minutes ahead counts as now. */
  readonly fromOutbox?: InputMaybe<Scalars['Boolean']['input']>;
  /** The job. */
  readonly jobId: Scalars['ID']['input'];
  /** Why it is given up. */
  readonly reason: Scalars['String']['input'];
  /** Revision that was read; checked when given. */
  readonly revision?: InputMaybe<Scalars['Int']['input']>;
};

/** Changes how a placement is kept warm, from now on. */
export type ChangeProtectionInput = {
  /** A new UUID for each change; repeat it to retry the same change. A repeated key has one effect and one answer. */
  readonly clientKey: Scalars['ID']['input'];
  /** Sent by an outbox, which repeats by itself and tells times by its own clock. A refusal is then kept under the key as well, so a late copy stays refused; a time up to five minutes ahead counts as now. */
  readonly fromOutbox?: InputMaybe<Scalars['Boolean']['input']>;
  /** The placement. */
  readonly placementId: Scalars['ID']['input'];
  /** How it is kept warm now; hours still count from placing. */
  readonly protectionPlan: ProtectionInput;
  /** Revision it was read at; checked when given. */
  readonly revision?: InputMaybe<Scalars['Int']['input']>;
};

/** Where the forecasts of a site come from, from now on. */
export type ChooseForecastSourceInput = {
  /** A new UUID for each change; repeat it to retry the same change. A repeated key has one effect and one answer. */
  readonly clientKey: Scalars['ID']['input'];
  /** Sent by an outbox, which repeats by itself and tells times by its own clock. A refusal is then kept under the key as well, so a late copy stays refused; a time up to five minutes ahead counts as now. */
  readonly fromOutbox?: InputMaybe<Scalars['Boolean']['input']>;
  /** Where the site lies: latitude in degrees; left out keeps the one it has. */
  readonly latitude?: InputMaybe<Scalars['Float']['input']>;
  /** Where the site lies: longitude in degrees, east positive; left out keeps the one it has. */
  readonly longitude?: InputMaybe<Scalars['Float']['input']>;
  /** Revision of the site that was read; checked when given. */
  readonly revision?: InputMaybe<Scalars['Int']['input']>;
  /** The site. */
  readonly siteId: Scalars['ID']['input'];
  /** The source. */
  readonly source: ForecastSource;
};

/** Chooses one of the two ways; plan, equipment and reminders follow. */
export type ChooseProtectionInput = {
  /** Which way. */
  readonly branch: ProtectionBranch;
  /** A new UUID for each change; repeat it to retry the same change. A repeated key has one effect and one answer. */
  readonly clientKey: Scalars['ID']['input'];
  /** Sent by an outbox, which repeats by itself and tells times by its own clock. A refusal is then kept under the key as well, so a late copy stays refused; a time up to five minutes ahead counts as now. */
  readonly fromOutbox?: InputMaybe<Scalars['Boolean']['input']>;
  /** What is to be placed, as it was compared. */
  readonly pour: ProtectOrWaitInput;
  /** Why, for the record. */
  readonly reason?: InputMaybe<Scalars['String']['input']>;
  /** Revision the phase was read at; checked when given. */
  readonly revision?: InputMaybe<Scalars['Int']['input']>;
};

/** A day on which a crew follows its week again. */
export type ClearCrewExceptionInput = {
  /** A new UUID for each change; repeat it to retry the same change. A repeated key has one effect and one answer. */
  readonly clientKey: Scalars['ID']['input'];
  /** The crew. */
  readonly crewId: Scalars['ID']['input'];
  /** The date as YYYY-MM-DD. */
  readonly day: Scalars['String']['input'];
  /** Sent by an outbox, which repeats by itself and tells times by its own clock. A refusal is then kept under the key as well, so a late copy stays refused; a time up to five minutes ahead counts as now. */
  readonly fromOutbox?: InputMaybe<Scalars['Boolean']['input']>;
};

/** Kind of leave from outside. */
export type ClearanceKind =
  /** The utility mark-out before digging; it lapses. */
  | 'markOut'
  /** Ordered material on site. */
  | 'material'
  /** A permit of the authority. */
  | 'permit';

/** How far a clearance is. */
export type ClearanceState =
  /** Given or delivered; see lapsesAt. */
  | 'cleared'
  /** Not asked for yet. */
  | 'needed'
  /** Asked for, not given. */
  | 'requested';

/** A job whose phases are promised as planned; those promised already stay. */
export type CommitJobInput = {
  /** A new UUID for each change; repeat it to retry the same change. A repeated key has one effect and one answer. */
  readonly clientKey: Scalars['ID']['input'];
  /** Sent by an outbox, which repeats by itself and tells times by its own clock. A refusal is then kept under the key as well, so a late copy stays refused; a time up to five minutes ahead counts as now. */
  readonly fromOutbox?: InputMaybe<Scalars['Boolean']['input']>;
  /** The job. */
  readonly jobId: Scalars['ID']['input'];
  /** Revision of the job that was read; checked when given. */
  readonly revision?: InputMaybe<Scalars['Int']['input']>;
};

/** Dates to promise for a phase; what is left out is taken from the plan. */
export type CommitPhaseInput = {
  /** A new UUID for each change; repeat it to retry the same change. A repeated key has one effect and one answer. */
  readonly clientKey: Scalars['ID']['input'];
  /** Who does it; left out for the crew of the plan. */
  readonly crewId?: InputMaybe<Scalars['ID']['input']>;
  /** Promised finish on a quarter of an hour. */
  readonly finishAt?: InputMaybe<Scalars['DateTime']['input']>;
  /** Sent by an outbox, which repeats by itself and tells times by its own clock. A refusal is then kept under the key as well, so a late copy stays refused; a time up to five minutes ahead counts as now. */
  readonly fromOutbox?: InputMaybe<Scalars['Boolean']['input']>;
  /** The phase. */
  readonly phaseId: Scalars['ID']['input'];
  /** Revision of the phase that was read; checked when given. */
  readonly revision?: InputMaybe<Scalars['Int']['input']>;
  /** Promised start on a quarter of an hour; give start and finish or neither. */
  readonly startAt?: InputMaybe<Scalars['DateTime']['input']>;
};

/** What has become of dates told to people. */
export type CommitmentState =
  /** They stand. */
  | 'held'
  /** The phase was finished under them. */
  | 'kept'
  /** They were taken back or replaced. */
  | 'released';

/** Whether a phase may pause. */
export type Continuity =
  /** Must fit one open stretch: a pour. */
  | 'continuous'
  /** Pauses overnight, over closed days and through weather holds. */
  | 'interruptible';

/** A sheet that takes the place of the one the job was entered from. */
export type CorrectMeasurementInput = {
  /** A new UUID for each change; repeat it to retry the same change. A repeated key has one effect and one answer. */
  readonly clientKey: Scalars['ID']['input'];
  /** Sent by an outbox, which repeats by itself and tells times by its own clock. A refusal is then kept under the key as well, so a late copy stays refused; a time up to five minutes ahead counts as now. */
  readonly fromOutbox?: InputMaybe<Scalars['Boolean']['input']>;
  /** The job. */
  readonly jobId: Scalars['ID']['input'];
  /** Measurements as JSON text, of the same areas and heating sets; what is built follows them. */
  readonly measurement: Scalars['String']['input'];
  /** Why it is corrected. */
  readonly reason: Scalars['String']['input'];
  /** Revision that was read; checked when given. */
  readonly revision?: InputMaybe<Scalars['Int']['input']>;
};

/** A new authority having jurisdiction. */
export type CreateAuthorityInput = {
  /** A new UUID for each change; repeat it to retry the same change. A repeated key has one effect and one answer. */
  readonly clientKey: Scalars['ID']['input'];
  /** Sent by an outbox, which repeats by itself and tells times by its own clock. A refusal is then kept under the key as well, so a late copy stays refused; a time up to five minutes ahead counts as now. */
  readonly fromOutbox?: InputMaybe<Scalars['Boolean']['input']>;
  /** Name of the office, unique in the company. */
  readonly name: Scalars['String']['input'];
  /** Hours of notice between a request and the earliest visit. */
  readonly noticeHours: Scalars['Int']['input'];
  /** Telephone number for requests. */
  readonly phone?: InputMaybe<Scalars['String']['input']>;
  /** Minutes a visit takes. */
  readonly visitMinutes: Scalars['Int']['input'];
  /** Visiting hours. */
  readonly week: ReadonlyArray<DayHoursInput>;
  /** IANA time zone of its visiting hours. */
  readonly zone: Scalars['String']['input'];
};

/** A new crew. */
export type CreateCrewInput = {
  /** A new UUID for each change; repeat it to retry the same change. A repeated key has one effect and one answer. */
  readonly clientKey: Scalars['ID']['input'];
  /** Sent by an outbox, which repeats by itself and tells times by its own clock. A refusal is then kept under the key as well, so a late copy stays refused; a time up to five minutes ahead counts as now. */
  readonly fromOutbox?: InputMaybe<Scalars['Boolean']['input']>;
  /** People who work in it; none when left out. */
  readonly memberIds?: InputMaybe<ReadonlyArray<Scalars['ID']['input']>>;
  /** Name, unique in the company. */
  readonly name: Scalars['String']['input'];
  /** How many people work in it. */
  readonly size: Scalars['Int']['input'];
  /** What it can do: labour, mason, cable, electrician, office. */
  readonly trades: ReadonlyArray<Scalars['String']['input']>;
  /** Weekly hours. */
  readonly week: ReadonlyArray<DayHoursInput>;
  /** IANA time zone of its hours. */
  readonly zone: Scalars['String']['input'];
};

/** A new job from the measurements of a site visit. */
export type CreateJobInput = {
  /** A new UUID for each change; repeat it to retry the same change. A repeated key has one effect and one answer. */
  readonly clientKey: Scalars['ID']['input'];
  /** Whether blankets, enclosures and heaters against the cold are planned; true when left out. */
  readonly coldWeather?: InputMaybe<Scalars['Boolean']['input']>;
  /** Promised end; none when left out. */
  readonly dueAt?: InputMaybe<Scalars['DateTime']['input']>;
  /** Sent by an outbox, which repeats by itself and tells times by its own clock. A refusal is then kept under the key as well, so a late copy stays refused; a time up to five minutes ahead counts as now. */
  readonly fromOutbox?: InputMaybe<Scalars['Boolean']['input']>;
  /** Measurements of the site visit as JSON text. */
  readonly measurement: Scalars['String']['input'];
  /** Name of the job. */
  readonly name: Scalars['String']['input'];
  /** Name of the owner of the house. */
  readonly ownerName: Scalars['String']['input'];
  /** 1 is served first, 9 last; 5 when left out. */
  readonly priority?: InputMaybe<Scalars['Int']['input']>;
  /** Where it is done. */
  readonly siteId: Scalars['ID']['input'];
  /** Template it is made from; the company's first when left out. */
  readonly templateId?: InputMaybe<Scalars['ID']['input']>;
};

/** A new site. */
export type CreateSiteInput = {
  /** Street address. */
  readonly address: Scalars['String']['input'];
  /** Authority that inspects there. */
  readonly authorityId?: InputMaybe<Scalars['ID']['input']>;
  /** A new UUID for each change; repeat it to retry the same change. A repeated key has one effect and one answer. */
  readonly clientKey: Scalars['ID']['input'];
  /** Sent by an outbox, which repeats by itself and tells times by its own clock. A refusal is then kept under the key as well, so a late copy stays refused; a time up to five minutes ahead counts as now. */
  readonly fromOutbox?: InputMaybe<Scalars['Boolean']['input']>;
  /** Frost depth to dig below, in inches. */
  readonly frostDepthInches: Scalars['Float']['input'];
  /** Where the frost depth comes from, such as the local rule and its date. */
  readonly frostSource: Scalars['String']['input'];
  /** Latitude in degrees, north positive. */
  readonly latitude?: InputMaybe<Scalars['Float']['input']>;
  /** Longitude in degrees, east positive. */
  readonly longitude?: InputMaybe<Scalars['Float']['input']>;
  /** Town. */
  readonly town: Scalars['String']['input'];
  /** IANA time zone. */
  readonly zone: Scalars['String']['input'];
};

/** Open hours of one weekday; a day left out is closed. */
export type DayHoursInput = {
  /** Weekday: mon, tue, wed, thu, fri, sat or sun. */
  readonly day: Scalars['String']['input'];
  /** Open stretches in order; none when the day is closed. */
  readonly hours: ReadonlyArray<HourRangeInput>;
};

/** Decides a hold point on what was measured, or decides it again. */
export type DecideHoldPointInput = {
  /** A new UUID for each change; repeat it to retry the same change. A repeated key has one effect and one answer. */
  readonly clientKey: Scalars['ID']['input'];
  /** The decision. */
  readonly decision: SiteDecision;
  /** Sent by an outbox, which repeats by itself and tells times by its own clock. A refusal is then kept under the key as well, so a late copy stays refused; a time up to five minutes ahead counts as now. */
  readonly fromOutbox?: InputMaybe<Scalars['Boolean']['input']>;
  /** The hold point. */
  readonly holdPointId: Scalars['ID']['input'];
  /** A remark for the record; for a refusal what is wrong and must be put right. */
  readonly remark?: InputMaybe<Scalars['String']['input']>;
  /** Revision it was read at; one that nobody touched since takes the decision at once. */
  readonly revision?: InputMaybe<Scalars['Int']['input']>;
  /** The state that was on record when this was decided. */
  readonly seen: HoldPointState;
  /** What was measured or confirmed, each item once. */
  readonly values: ReadonlyArray<MeasuredValueInput>;
};

/** What has become of a delivery. */
export type DeliveryState =
  /** To be sent; the error says what it waits for when a try has failed. */
  | 'claimed'
  /** Given up; the error says why. */
  | 'failed'
  /** The mail server has taken it. */
  | 'sent';

/** A phase to take out of its job. */
export type DropPhaseInput = {
  /** A new UUID for each change; repeat it to retry the same change. A repeated key has one effect and one answer. */
  readonly clientKey: Scalars['ID']['input'];
  /** Sent by an outbox, which repeats by itself and tells times by its own clock. A refusal is then kept under the key as well, so a late copy stays refused; a time up to five minutes ahead counts as now. */
  readonly fromOutbox?: InputMaybe<Scalars['Boolean']['input']>;
  /** The phase; it must not have started. */
  readonly phaseId: Scalars['ID']['input'];
  /** Why it is not needed. */
  readonly reason: Scalars['String']['input'];
  /** Revision that was read; checked when given. */
  readonly revision?: InputMaybe<Scalars['Int']['input']>;
};

/** A proposal to drop: the commitments stay as they are. */
export type DropProposalInput = {
  /** A new UUID for each change; repeat it to retry the same change. A repeated key has one effect and one answer. */
  readonly clientKey: Scalars['ID']['input'];
  /** Sent by an outbox, which repeats by itself and tells times by its own clock. A refusal is then kept under the key as well, so a late copy stays refused; a time up to five minutes ahead counts as now. */
  readonly fromOutbox?: InputMaybe<Scalars['Boolean']['input']>;
  /** The proposal. */
  readonly proposalId: Scalars['ID']['input'];
  /** Revision that was read; checked when given. */
  readonly revision?: InputMaybe<Scalars['Int']['input']>;
};

/** How a duration is counted. */
export type DurationKind =
  /** By the clock, nights and closed days included: a cure. */
  | 'elapsed'
  /** In the open hours of the crew. */
  | 'work';

/** Records that the visit failed; a re-inspection is made. */
export type FailInspectionInput = {
  /** When the result was given; now when left out. */
  readonly at?: InputMaybe<Scalars['DateTime']['input']>;
  /** A new UUID for each change; repeat it to retry the same change. A repeated key has one effect and one answer. */
  readonly clientKey: Scalars['ID']['input'];
  /** Sent by an outbox, which repeats by itself and tells times by its own clock. A refusal is then kept under the key as well, so a late copy stays refused; a time up to five minutes ahead counts as now. */
  readonly fromOutbox?: InputMaybe<Scalars['Boolean']['input']>;
  /** The inspection. */
  readonly inspectionId: Scalars['ID']['input'];
  /** Who inspected. */
  readonly inspector: Scalars['String']['input'];
  /** What the inspector found wrong. */
  readonly note: Scalars['String']['input'];
  /** Revision it was read at; checked when given. */
  readonly revision?: InputMaybe<Scalars['Int']['input']>;
};

/** Finishes a started phase. */
export type FinishPhaseInput = {
  /** When it finished; now when left out. */
  readonly at?: InputMaybe<Scalars['DateTime']['input']>;
  /** A new UUID for each change; repeat it to retry the same change. A repeated key has one effect and one answer. */
  readonly clientKey: Scalars['ID']['input'];
  /** Sent by an outbox, which repeats by itself and tells times by its own clock. A refusal is then kept under the key as well, so a late copy stays refused; a time up to five minutes ahead counts as now. */
  readonly fromOutbox?: InputMaybe<Scalars['Boolean']['input']>;
  /** The phase. */
  readonly phaseId: Scalars['ID']['input'];
  /** Revision it was read at; checked when given. */
  readonly revision?: InputMaybe<Scalars['Int']['input']>;
};

/** Form of a forecast file; both use the same names with the unit in them. */
export type ForecastFormat =
  /** A line issued_at, a line of column names, then a row an hour. */
  | 'csv'
  /** An object with issued_at and hours. */
  | 'json';

/** Where the forecasts of a site come from. */
export type ForecastSource =
  /** Fetched from the public gridpoint forecasts of the national weather service; the United States only. */
  | 'nationalService'
  /** Fetched from an open hourly forecast service; anywhere. It does not say when a forecast was issued: its age counts from the first fetch. */
  | 'openHourly'
  /** People upload them; nothing is fetched. */
  | 'uploaded';

/** What a hold point stands before. */
export type Gate =
  /** Must be released before the phase finishes. */
  | 'finish'
  /** Must be released before the phase starts. */
  | 'start';

/** Who or what holds the work. */
export type HoldCause =
  /** A person on site or in the office called it. */
  | 'called'
  /** The forecast breaks a limit of the phase in the next 72 hours. */
  | 'forecast';

/** What kind of thing must be released. */
export type HoldPointKind =
  /** Measured and confirmed by the crew. */
  | 'check'
  /** Leave from outside: permit, mark-out, material. */
  | 'clearance'
  /** Strength of what was placed. */
  | 'cure'
  /** Passed by the authority having jurisdiction. */
  | 'inspection'
  /** Accepted resistance and insulation reading of a heating set. */
  | 'reading';

/** State of a hold point. */
export type HoldPointState =
  /** Not decided yet. */
  | 'open'
  /** Refused; it can be released later. */
  | 'refused'
  /** Released; the gate is open. */
  | 'released'
  /** Waived by the office with a reason. */
  | 'waived';

/** State of a hookup. */
export type HookupState =
  /** The electrician booked a day. */
  | 'booked'
  /** Connected and recorded. */
  | 'done'
  /** All needs are met; the electrician was told. */
  | 'ready'
  /** A need is not met yet. */
  | 'waiting';

/** A stretch of open hours within one day, in local time. */
export type HourRangeInput = {
  /** Opening time as HH:MM. */
  readonly from: Scalars['String']['input'];
  /** Closing time as HH:MM, after the opening; 24:00 is the end of the day. */
  readonly to: Scalars['String']['input'];
};

/** What has become of a search for a better plan. */
export type ImprovementState =
  /** The office accepted its proposal; the plan follows it. */
  | 'accepted'
  /** The office dropped its proposal. */
  | 'dropped'
  /** It could not be done; the message says why. */
  | 'failed'
  /** It found a better plan, which waits as a proposal. */
  | 'offered'
  /** Facts have moved so that its plan is no longer better, or a later search took its place. */
  | 'outdated'
  /** A worker searches. */
  | 'running'
  /** It was stopped, and what it had found was thrown away. */
  | 'stopped'
  /** It found nothing better than the plan in force. */
  | 'unchanged'
  /** No worker has begun it yet. */
  | 'waiting';

/** How to stop a search. */
export type ImprovementStop =
  /** What it has found is thrown away. */
  | 'discard'
  /** The best plan so far is proposed, if it is better than the one in force. */
  | 'keep';

/** State of one visit by the authority having jurisdiction. */
export type InspectionState =
  /** A window is booked. */
  | 'booked'
  /** Failed; the next attempt is a row of its own. */
  | 'failed'
  /** Not asked for yet. */
  | 'needed'
  /** Passed. */
  | 'passed'
  /** Asked for; no window booked yet. */
  | 'requested';

/** What became of an intent. */
export type IntentAnswer =
  /** The field had this value already; nothing was written. */
  | 'alreadyApplied'
  /** The field has the new value by this intent. */
  | 'applied';

/** How far a job is. */
export type JobState =
  /** Given up; the plan leaves it out. */
  | 'cancelled'
  /** All phases are done. */
  | 'done'
  /** Entered; no phase has started. */
  | 'entered'
  /** At least one phase has started. */
  | 'running';

/** How a lag is counted. */
export type LagIn =
  /** By the clock. */
  | 'elapsed'
  /** In the open hours of the phase that waits. */
  | 'working';

/** A weather hold that ends now. */
export type LiftWeatherHoldInput = {
  /** A new UUID for each change; repeat it to retry the same change. A repeated key has one effect and one answer. */
  readonly clientKey: Scalars['ID']['input'];
  /** Sent by an outbox, which repeats by itself and tells times by its own clock. A refusal is then kept under the key as well, so a late copy stays refused; a time up to five minutes ahead counts as now. */
  readonly fromOutbox?: InputMaybe<Scalars['Boolean']['input']>;
  /** Why it may be lifted. */
  readonly reason: Scalars['String']['input'];
  /** Revision that was read; checked when given. */
  readonly revision?: InputMaybe<Scalars['Int']['input']>;
  /** The hold. */
  readonly weatherHoldId: Scalars['ID']['input'];
};

/** Which end of one phase waits for which end of another. */
export type LinkKind =
  /** The later one finishes after the earlier one has finished. */
  | 'finishFinish'
  /** The later one starts after the earlier one has finished. */
  | 'finishStart'
  /** The later one finishes after the earlier one has started. */
  | 'startFinish'
  /** The later one starts after the earlier one has started. */
  | 'startStart';

/** What a signed link is for. */
export type LinkPurpose =
  /** The hookup sheet: read it, book a day, record the hookup. */
  | 'hookup'
  /** The owner of the house reads what happens this week. */
  | 'ownerWeek';

/** Whether a signed link opens anything. */
export type LinkState =
  /** Its days are over. */
  | 'expired'
  /** It opens its page. */
  | 'live'
  /** It was taken back, or the account it was mailed to is closed. */
  | 'revoked';

/** Makes a signed link. */
export type MakeSignedLinkInput = {
  /** A new UUID for each change; repeat it to retry the same change. A repeated key has one effect and one answer. */
  readonly clientKey: Scalars['ID']['input'];
  /** Days until it ends by itself, 1 to 365; left out, 60 for a hookup and 120 for an owner. */
  readonly days?: InputMaybe<Scalars['Int']['input']>;
  /** Sent by an outbox, which repeats by itself and tells times by its own clock. A refusal is then kept under the key as well, so a late copy stays refused; a time up to five minutes ahead counts as now. */
  readonly fromOutbox?: InputMaybe<Scalars['Boolean']['input']>;
  /** The job whose page it opens. */
  readonly jobId: Scalars['ID']['input'];
  /** What it is for. */
  readonly purpose: LinkPurpose;
  /** Name of the one it is for; shown wherever they act. */
  readonly recipient: Scalars['String']['input'];
};

/** Marks when a phase started or finished, or corrects that. */
export type MarkPhaseInput = {
  /** When it was. */
  readonly at: Scalars['DateTime']['input'];
  /** A new UUID for each change; repeat it to retry the same change. A repeated key has one effect and one answer. */
  readonly clientKey: Scalars['ID']['input'];
  /** Sent by an outbox, which repeats by itself and tells times by its own clock. A refusal is then kept under the key as well, so a late copy stays refused; a time up to five minutes ahead counts as now. */
  readonly fromOutbox?: InputMaybe<Scalars['Boolean']['input']>;
  /** Which moment. */
  readonly mark: PhaseMark;
  /** The phase. */
  readonly phaseId: Scalars['ID']['input'];
  /** Revision the phase was read at; a phase that nobody touched since takes the value at once. */
  readonly revision?: InputMaybe<Scalars['Int']['input']>;
  /** The moment that was on record when this was asked for; null for none. */
  readonly seen?: InputMaybe<Scalars['DateTime']['input']>;
};

/** What was measured or confirmed for one item: exactly one of value, values and confirmed. */
export type MeasuredValueInput = {
  /** Yes or no where that is asked for. */
  readonly confirmed?: InputMaybe<Scalars['Boolean']['input']>;
  /** Item that was measured. */
  readonly itemId: Scalars['ID']['input'];
  /** The one value taken, in the unit of the item. */
  readonly value?: InputMaybe<Scalars['Float']['input']>;
  /** The values taken where the item asks for many, in the unit of the item. */
  readonly values?: InputMaybe<ReadonlyArray<Scalars['Float']['input']>>;
};

/** How another start for a phase is meant. */
export type MoveWay =
  /** Then; what that breaks is a conflict of the plan. */
  | 'fixed'
  /** At the first place from then on that everything else allows. */
  | 'notBefore';

/** Writes the note of a phase. */
export type NotePhaseInput = {
  /** A new UUID for each change; repeat it to retry the same change. A repeated key has one effect and one answer. */
  readonly clientKey: Scalars['ID']['input'];
  /** Sent by an outbox, which repeats by itself and tells times by its own clock. A refusal is then kept under the key as well, so a late copy stays refused; a time up to five minutes ahead counts as now. */
  readonly fromOutbox?: InputMaybe<Scalars['Boolean']['input']>;
  /** The note; null takes it away. */
  readonly note?: InputMaybe<Scalars['String']['input']>;
  /** The phase. */
  readonly phaseId: Scalars['ID']['input'];
  /** Revision the phase was read at; a phase that nobody touched since takes the value at once. */
  readonly revision?: InputMaybe<Scalars['Int']['input']>;
  /** The note that stood when this was written. */
  readonly seen?: InputMaybe<Scalars['String']['input']>;
};

/** Where a phase or link comes from. */
export type Origin =
  /** Added to this job by the office. */
  | 'custom'
  /** From the template of the job. */
  | 'template';

/** Records that the visit passed. */
export type PassInspectionInput = {
  /** When the result was given; now when left out. */
  readonly at?: InputMaybe<Scalars['DateTime']['input']>;
  /** A new UUID for each change; repeat it to retry the same change. A repeated key has one effect and one answer. */
  readonly clientKey: Scalars['ID']['input'];
  /** Sent by an outbox, which repeats by itself and tells times by its own clock. A refusal is then kept under the key as well, so a late copy stays refused; a time up to five minutes ahead counts as now. */
  readonly fromOutbox?: InputMaybe<Scalars['Boolean']['input']>;
  /** The inspection. */
  readonly inspectionId: Scalars['ID']['input'];
  /** Who inspected. */
  readonly inspector: Scalars['String']['input'];
  /** What the inspector said. */
  readonly note?: InputMaybe<Scalars['String']['input']>;
  /** Revision it was read at; checked when given. */
  readonly revision?: InputMaybe<Scalars['Int']['input']>;
};

/** Which moment of a phase is marked. */
export type PhaseMark =
  /** When its work was done. */
  | 'finish'
  /** When its work began. */
  | 'start';

/** How far a phase is. */
export type PhaseState =
  /** Finished. */
  | 'done'
  /** Taken out of the job; nothing waits for it. */
  | 'dropped'
  /** Started and not finished. */
  | 'started'
  /** Not started. */
  | 'waiting';

/** A start that the office fixes, or frees again. */
export type PinPhaseInput = {
  /** A new UUID for each change; repeat it to retry the same change. A repeated key has one effect and one answer. */
  readonly clientKey: Scalars['ID']['input'];
  /** Sent by an outbox, which repeats by itself and tells times by its own clock. A refusal is then kept under the key as well, so a late copy stays refused; a time up to five minutes ahead counts as now. */
  readonly fromOutbox?: InputMaybe<Scalars['Boolean']['input']>;
  /** The phase. */
  readonly phaseId: Scalars['ID']['input'];
  /** Revision of the phase that was read; checked when given. */
  readonly revision?: InputMaybe<Scalars['Int']['input']>;
  /** The start, on a quarter of an hour; null frees it. */
  readonly startAt?: InputMaybe<Scalars['DateTime']['input']>;
};

/** What counts how much in a plan, from 0 to 1000; what is left out counts as usual. */
export type PlanWeightsInput = {
  /** Sparing crews the move to another site. */
  readonly crewMoves?: InputMaybe<Scalars['Float']['input']>;
  /** Keeping promised dates. */
  readonly disturbance?: InputMaybe<Scalars['Float']['input']>;
  /** Finishing early. */
  readonly finish?: InputMaybe<Scalars['Float']['input']>;
  /** Being late. */
  readonly lateness?: InputMaybe<Scalars['Float']['input']>;
};

/** What has become of a proposal. */
export type ProposalState =
  /** The commitments were moved as it says. */
  | 'accepted'
  /** The office keeps the commitments as they are. */
  | 'dropped'
  /** Waits for the office. */
  | 'open'
  /** A later plan differs otherwise, or no longer. */
  | 'superseded'
  /** It was accepted, and undone. */
  | 'undone';

/** Another start for a phase that has not begun, to be proposed beside the plan in force. */
export type ProposeMoveInput = {
  /** A new UUID for each change; repeat it to retry the same change. A repeated key has one effect and one answer. */
  readonly clientKey: Scalars['ID']['input'];
  /** The crew that is to do it; left out for the one it has, or the choice of the plan. */
  readonly crewId?: InputMaybe<Scalars['ID']['input']>;
  /** Sent by an outbox, which repeats by itself and tells times by its own clock. A refusal is then kept under the key as well, so a late copy stays refused; a time up to five minutes ahead counts as now. */
  readonly fromOutbox?: InputMaybe<Scalars['Boolean']['input']>;
  /** The phase. */
  readonly phaseId: Scalars['ID']['input'];
  /** Revision of the phase that was read; checked when given. */
  readonly revision?: InputMaybe<Scalars['Int']['input']>;
  /** The start, on a quarter of an hour. */
  readonly startAt: Scalars['DateTime']['input'];
  /** Whether it starts no earlier than then, or then and not otherwise. */
  readonly way?: MoveWay;
};

/** What has become of a move. */
export type ProposedMoveState =
  /** The office accepted its proposal; the plan follows it. */
  | 'accepted'
  /** The office dropped its proposal, or tried another move. */
  | 'dropped'
  /** It waits as a proposal. */
  | 'offered'
  /** Facts have moved so that it can no longer be made; the message says why. */
  | 'outdated'
  /** It moved nothing. */
  | 'unchanged'
  /** It was accepted, and undone. */
  | 'undone';

/** What is to be placed, for a comparison of protecting it and waiting. */
export type ProtectOrWaitInput = {
  /** Whether an accelerator is in it; no when left out. */
  readonly accelerated?: InputMaybe<Scalars['Boolean']['input']>;
  /** Concrete, grout or mortar; by the hatch of the phase when left out. */
  readonly material?: InputMaybe<Scalars['String']['input']>;
  /** The phase that is to place it; it has not started. */
  readonly phaseId: Scalars['ID']['input'];
  /** Temperature as placed, °F; 60 when left out. */
  readonly placedTempF?: InputMaybe<Scalars['Float']['input']>;
  /** The protection to compare with; a tent at 60 °F for 12 h, then a layer of blanket, when left out. */
  readonly protectionPlan?: InputMaybe<ProtectionInput>;
  /** Least dimension of the section, in; 10 for concrete, 8 for grout, 1.5 for mortar when left out. */
  readonly sectionInches?: InputMaybe<Scalars['Float']['input']>;
};

/** The two ways with a placement that meets cold weather. */
export type ProtectionBranch =
  /** Place it now, under blankets or in a heated enclosure. */
  | 'protect'
  /** Wait for a window in which it may be placed and cure without protection. */
  | 'wait';

/** How a placement is kept warm. */
export type ProtectionInput = {
  /** Layers of insulated blanket on it; none when left out. */
  readonly blanketLayers?: InputMaybe<Scalars['Int']['input']>;
  /** Thermal resistance of one layer, h·ft²·°F/Btu; 4 when left out (common practice, no source). */
  readonly blanketR?: InputMaybe<Scalars['Float']['input']>;
  /** Whether it stands in a heated enclosure; no when left out. */
  readonly enclosure?: InputMaybe<Scalars['Boolean']['input']>;
  /** Temperature inside the enclosure, °F; 60 when left out (common practice, no source). */
  readonly enclosureF?: InputMaybe<Scalars['Float']['input']>;
  /** Hours from placing in which it is heated; 12 when left out (rule of the trade, no source). */
  readonly heatHours?: InputMaybe<Scalars['Float']['input']>;
};

/** Takes back a start or a finish that was wrong. */
export type PutBackPhaseInput = {
  /** A new UUID for each change; repeat it to retry the same change. A repeated key has one effect and one answer. */
  readonly clientKey: Scalars['ID']['input'];
  /** Sent by an outbox, which repeats by itself and tells times by its own clock. A refusal is then kept under the key as well, so a late copy stays refused; a time up to five minutes ahead counts as now. */
  readonly fromOutbox?: InputMaybe<Scalars['Boolean']['input']>;
  /** The phase. */
  readonly phaseId: Scalars['ID']['input'];
  /** Why it was wrong. */
  readonly reason: Scalars['String']['input'];
  /** Revision it was read at; checked when given. */
  readonly revision?: InputMaybe<Scalars['Int']['input']>;
};

/** When a heating set is tested. */
export type ReadingStage =
  /** Last, before the electrician connects it. */
  | 'beforeHookup'
  /** After covering. */
  | 'covered'
  /** Laid and fastened, before anything covers it. */
  | 'laid'
  /** As delivered, before anything is unrolled. */
  | 'received';

/** Receives a heating set: its label as delivered takes the place of the design. */
export type ReceiveHeatingSetInput = {
  /** A new UUID for each change; repeat it to retry the same change. A repeated key has one effect and one answer. */
  readonly clientKey: Scalars['ID']['input'];
  /** Length of the cold lead, ft. */
  readonly coldLeadFeet: Scalars['Float']['input'];
  /** Resistance of one conductor of the cold lead, Ω/ft; 0 when the label counts the lead in; as designed when left out. */
  readonly coldLeadOhmsPerFoot?: InputMaybe<Scalars['Float']['input']>;
  /** Days the bed cures before the set may be energised; as designed when left out. */
  readonly cureDays?: InputMaybe<Scalars['Int']['input']>;
  /** Sent by an outbox, which repeats by itself and tells times by its own clock. A refusal is then kept under the key as well, so a late copy stays refused; a time up to five minutes ahead counts as now. */
  readonly fromOutbox?: InputMaybe<Scalars['Boolean']['input']>;
  /** Length of the heating cable, ft. */
  readonly heatedFeet: Scalars['Float']['input'];
  /** Voltage of the insulation test by its instructions, V; as designed when left out. */
  readonly insulationVolts?: InputMaybe<Scalars['Float']['input']>;
  /** The job it was delivered for. */
  readonly jobId: Scalars['ID']['input'];
  /** Key of the set within its job. */
  readonly key: Scalars['String']['input'];
  /** Temperature at which the label resistance holds, °F; as designed when left out. */
  readonly labelTempF?: InputMaybe<Scalars['Float']['input']>;
  /** Least bending radius, in; as designed when left out. */
  readonly minBendInches?: InputMaybe<Scalars['Float']['input']>;
  /** Least insulation resistance, MΩ; as designed when left out. */
  readonly minMegaohms?: InputMaybe<Scalars['Float']['input']>;
  /** Name; the one of the design when left out. */
  readonly name?: InputMaybe<Scalars['String']['input']>;
  /** Resistance on the label, Ω. */
  readonly ohms: Scalars['Float']['input'];
  /** When it came; now when left out. */
  readonly receivedAt?: InputMaybe<Scalars['DateTime']['input']>;
  /** Revision the set was read at; checked when given. */
  readonly revision?: InputMaybe<Scalars['Int']['input']>;
  /** Temperature coefficient of the heating conductor, per kelvin; as designed when left out. */
  readonly tempCoefficient?: InputMaybe<Scalars['Float']['input']>;
  /** Upper tolerance of the resistance as a fraction, such as 0.1; as designed when left out. */
  readonly toleranceHigh?: InputMaybe<Scalars['Float']['input']>;
  /** Lower tolerance of the resistance as a fraction, such as -0.05; as designed when left out. */
  readonly toleranceLow?: InputMaybe<Scalars['Float']['input']>;
  /** Potential on the label, V. */
  readonly volts: Scalars['Float']['input'];
  /** Power on the label, W. */
  readonly watts: Scalars['Float']['input'];
};

/** Records one resistance and insulation test. */
export type RecordCableReadingInput = {
  /** The area just laid or covered; left out for received and before hookup. */
  readonly areaId?: InputMaybe<Scalars['ID']['input']>;
  /** When it was taken; now when left out. */
  readonly at?: InputMaybe<Scalars['DateTime']['input']>;
  /** Temperature of the cable, °F. */
  readonly cableTempF: Scalars['Float']['input'];
  /** A new UUID for each change; repeat it to retry the same change. A repeated key has one effect and one answer. */
  readonly clientKey: Scalars['ID']['input'];
  /** Sent by an outbox, which repeats by itself and tells times by its own clock. A refusal is then kept under the key as well, so a late copy stays refused; a time up to five minutes ahead counts as now. */
  readonly fromOutbox?: InputMaybe<Scalars['Boolean']['input']>;
  /** The heating set. */
  readonly heatingSetId: Scalars['ID']['input'];
  /** Insulation resistance to ground, MΩ. */
  readonly megaohms: Scalars['Float']['input'];
  /** Resistance between the conductors, Ω, the cold lead counted in. */
  readonly ohms: Scalars['Float']['input'];
  /** Revision it was read at; checked when given. */
  readonly revision?: InputMaybe<Scalars['Int']['input']>;
  /** When in the work it was taken. */
  readonly stage: ReadingStage;
  /** Voltage of the insulation test, V. */
  readonly testVolts: Scalars['Float']['input'];
};

/** A clearance that was given, or material that came. */
export type RecordClearanceInput = {
  /** The clearance. */
  readonly clearanceId: Scalars['ID']['input'];
  /** When it was given; now when left out. */
  readonly clearedAt?: InputMaybe<Scalars['DateTime']['input']>;
  /** A new UUID for each change; repeat it to retry the same change. A repeated key has one effect and one answer. */
  readonly clientKey: Scalars['ID']['input'];
  /** Sent by an outbox, which repeats by itself and tells times by its own clock. A refusal is then kept under the key as well, so a late copy stays refused; a time up to five minutes ahead counts as now. */
  readonly fromOutbox?: InputMaybe<Scalars['Boolean']['input']>;
  /** When it lapses, as the paper says; by its usual life when left out. */
  readonly lapsesAt?: InputMaybe<Scalars['DateTime']['input']>;
  /** Permit, ticket or order number. */
  readonly reference?: InputMaybe<Scalars['String']['input']>;
  /** Revision that was read; checked when given. */
  readonly revision?: InputMaybe<Scalars['Int']['input']>;
};

/** Records that a heating set was energised. */
export type RecordEnergisedInput = {
  /** When it was; now when left out. */
  readonly at?: InputMaybe<Scalars['DateTime']['input']>;
  /** A new UUID for each change; repeat it to retry the same change. A repeated key has one effect and one answer. */
  readonly clientKey: Scalars['ID']['input'];
  /** Sent by an outbox, which repeats by itself and tells times by its own clock. A refusal is then kept under the key as well, so a late copy stays refused; a time up to five minutes ahead counts as now. */
  readonly fromOutbox?: InputMaybe<Scalars['Boolean']['input']>;
  /** The hookup. */
  readonly hookupId: Scalars['ID']['input'];
  /** Revision it was read at; checked when given. */
  readonly revision?: InputMaybe<Scalars['Int']['input']>;
};

/** Records a connection that was made. */
export type RecordHookupInput = {
  /** When it was made; now when left out. */
  readonly at?: InputMaybe<Scalars['DateTime']['input']>;
  /** Rating of the breaker, A. */
  readonly breakerAmperes: Scalars['Float']['input'];
  /** A new UUID for each change; repeat it to retry the same change. A repeated key has one effect and one answer. */
  readonly clientKey: Scalars['ID']['input'];
  /** Whether the disconnect is in place and marked. */
  readonly disconnect: Scalars['Boolean']['input'];
  /** Sent by an outbox, which repeats by itself and tells times by its own clock. A refusal is then kept under the key as well, so a late copy stays refused; a time up to five minutes ahead counts as now. */
  readonly fromOutbox?: InputMaybe<Scalars['Boolean']['input']>;
  /** Whether ground-fault protection of equipment is in place and tested. */
  readonly groundFault: Scalars['Boolean']['input'];
  /** The hookup. */
  readonly hookupId: Scalars['ID']['input'];
  /** A note for the record. */
  readonly note?: InputMaybe<Scalars['String']['input']>;
  /** Revision it was read at; checked when given. */
  readonly revision?: InputMaybe<Scalars['Int']['input']>;
};

/** Records how the leads of a heating set stand. */
export type RecordLeadsInput = {
  /** A new UUID for each change; repeat it to retry the same change. A repeated key has one effect and one answer. */
  readonly clientKey: Scalars['ID']['input'];
  /** Free length of the cold lead inside the wall, in; left out, it is not measured. */
  readonly coldLeadFreeInches?: InputMaybe<Scalars['Float']['input']>;
  /** Whether the cold lead is through the wall. */
  readonly coldLeadThrough: Scalars['Boolean']['input'];
  /** Sent by an outbox, which repeats by itself and tells times by its own clock. A refusal is then kept under the key as well, so a late copy stays refused; a time up to five minutes ahead counts as now. */
  readonly fromOutbox?: InputMaybe<Scalars['Boolean']['input']>;
  /** The hookup. */
  readonly hookupId: Scalars['ID']['input'];
  /** Whether both leads are labelled. */
  readonly leadsLabelled: Scalars['Boolean']['input'];
  /** Revision it was read at; checked when given. */
  readonly revision?: InputMaybe<Scalars['Int']['input']>;
  /** Whether the sensor lead is through the wall. */
  readonly sensorThrough: Scalars['Boolean']['input'];
};

/** Records concrete, grout or mortar as it was placed. */
export type RecordPlacementInput = {
  /** Whether an accelerator is in the mixture; no when left out. The estimate counts it, cautiously. */
  readonly accelerated?: InputMaybe<Scalars['Boolean']['input']>;
  /** A new UUID for each change; repeat it to retry the same change. A repeated key has one effect and one answer. */
  readonly clientKey: Scalars['ID']['input'];
  /** Sent by an outbox, which repeats by itself and tells times by its own clock. A refusal is then kept under the key as well, so a late copy stays refused; a time up to five minutes ahead counts as now. */
  readonly fromOutbox?: InputMaybe<Scalars['Boolean']['input']>;
  /** What was placed: concrete, grout or mortar. */
  readonly material: Scalars['String']['input'];
  /** The phase that placed it. */
  readonly phaseId: Scalars['ID']['input'];
  /** When it was placed; now when left out. */
  readonly placedAt?: InputMaybe<Scalars['DateTime']['input']>;
  /** Temperature as placed, °F. */
  readonly placedTempF: Scalars['Float']['input'];
  /** What keeps it warm: blanket, enclosure, heater; nothing when left out. Give `protectionPlan` to say how much of it. */
  readonly protection?: InputMaybe<ReadonlyArray<Scalars['String']['input']>>;
  /** How it is kept warm; goes before `protection`. */
  readonly protectionPlan?: InputMaybe<ProtectionInput>;
  /** Strength it must reach, psi; left out, what its cure hold point asks for. */
  readonly requiredPsi?: InputMaybe<Scalars['Float']['input']>;
  /** Revision the phase was read at; checked when given. */
  readonly revision?: InputMaybe<Scalars['Int']['input']>;
  /** Least dimension of the section, in. */
  readonly sectionInches: Scalars['Float']['input'];
};

/** Tells how much work is left of a started phase. */
export type RecordProgressInput = {
  /** A new UUID for each change; repeat it to retry the same change. A repeated key has one effect and one answer. */
  readonly clientKey: Scalars['ID']['input'];
  /** Sent by an outbox, which repeats by itself and tells times by its own clock. A refusal is then kept under the key as well, so a late copy stays refused; a time up to five minutes ahead counts as now. */
  readonly fromOutbox?: InputMaybe<Scalars['Boolean']['input']>;
  /** The phase. */
  readonly phaseId: Scalars['ID']['input'];
  /** Minutes of work left for the crew. */
  readonly remainingMinutes: Scalars['Int']['input'];
  /** Revision it was read at; checked when given. */
  readonly revision?: InputMaybe<Scalars['Int']['input']>;
};

/** Records a temperature read in a placement. */
export type RecordTemperatureInput = {
  /** Temperature of the air beside it, °F. */
  readonly airF?: InputMaybe<Scalars['Float']['input']>;
  /** When it was read; now when left out. */
  readonly at?: InputMaybe<Scalars['DateTime']['input']>;
  /** A new UUID for each change; repeat it to retry the same change. A repeated key has one effect and one answer. */
  readonly clientKey: Scalars['ID']['input'];
  /** Temperature of the concrete or mortar, °F. */
  readonly concreteF: Scalars['Float']['input'];
  /** Sent by an outbox, which repeats by itself and tells times by its own clock. A refusal is then kept under the key as well, so a late copy stays refused; a time up to five minutes ahead counts as now. */
  readonly fromOutbox?: InputMaybe<Scalars['Boolean']['input']>;
  /** The placement. */
  readonly placementId: Scalars['ID']['input'];
  /** Revision it was read at; checked when given. */
  readonly revision?: InputMaybe<Scalars['Int']['input']>;
};

/** Refuses a hold point; it can be released later. */
export type RefuseHoldPointInput = {
  /** A new UUID for each change; repeat it to retry the same change. A repeated key has one effect and one answer. */
  readonly clientKey: Scalars['ID']['input'];
  /** Sent by an outbox, which repeats by itself and tells times by its own clock. A refusal is then kept under the key as well, so a late copy stays refused; a time up to five minutes ahead counts as now. */
  readonly fromOutbox?: InputMaybe<Scalars['Boolean']['input']>;
  /** The hold point. */
  readonly holdPointId: Scalars['ID']['input'];
  /** What is wrong and must be put right. */
  readonly reason: Scalars['String']['input'];
  /** Revision it was read at; checked when given. */
  readonly revision?: InputMaybe<Scalars['Int']['input']>;
  /** What was measured, as far as it was. */
  readonly values: ReadonlyArray<MeasuredValueInput>;
};

/** Registers a temperature logger, for one placement or for a site. */
export type RegisterLoggerInput = {
  /** A new UUID for each change; repeat it to retry the same change. A repeated key has one effect and one answer. */
  readonly clientKey: Scalars['ID']['input'];
  /** Sent by an outbox, which repeats by itself and tells times by its own clock. A refusal is then kept under the key as well, so a late copy stays refused; a time up to five minutes ahead counts as now. */
  readonly fromOutbox?: InputMaybe<Scalars['Boolean']['input']>;
  /** Name people know it by. */
  readonly name: Scalars['String']['input'];
  /** The placement it sits in; left out, it may post for every placement of the site and names the placement with each reading. */
  readonly placementId?: InputMaybe<Scalars['ID']['input']>;
  /** The site it stands at. */
  readonly siteId: Scalars['ID']['input'];
};

/** A phase whose promise is taken back. */
export type ReleaseCommitmentInput = {
  /** A new UUID for each change; repeat it to retry the same change. A repeated key has one effect and one answer. */
  readonly clientKey: Scalars['ID']['input'];
  /** Sent by an outbox, which repeats by itself and tells times by its own clock. A refusal is then kept under the key as well, so a late copy stays refused; a time up to five minutes ahead counts as now. */
  readonly fromOutbox?: InputMaybe<Scalars['Boolean']['input']>;
  /** The phase. */
  readonly phaseId: Scalars['ID']['input'];
  /** Revision of the phase that was read; checked when given. */
  readonly revision?: InputMaybe<Scalars['Int']['input']>;
};

/** Releases a hold point on what was measured. */
export type ReleaseHoldPointInput = {
  /** A new UUID for each change; repeat it to retry the same change. A repeated key has one effect and one answer. */
  readonly clientKey: Scalars['ID']['input'];
  /** Sent by an outbox, which repeats by itself and tells times by its own clock. A refusal is then kept under the key as well, so a late copy stays refused; a time up to five minutes ahead counts as now. */
  readonly fromOutbox?: InputMaybe<Scalars['Boolean']['input']>;
  /** The hold point. */
  readonly holdPointId: Scalars['ID']['input'];
  /** A note for the record. */
  readonly note?: InputMaybe<Scalars['String']['input']>;
  /** Revision it was read at; checked when given. */
  readonly revision?: InputMaybe<Scalars['Int']['input']>;
  /** What was measured or confirmed, each item once. */
  readonly values: ReadonlyArray<MeasuredValueInput>;
};

/** Which photo the owner of the house is to see. */
export type ReleasePhotoInput = {
  /** A new UUID for each change; repeat it to retry the same change. A repeated key has one effect and one answer. */
  readonly clientKey: Scalars['ID']['input'];
  /** Sent by an outbox, which repeats by itself and tells times by its own clock. A refusal is then kept under the key as well, so a late copy stays refused; a time up to five minutes ahead counts as now. */
  readonly fromOutbox?: InputMaybe<Scalars['Boolean']['input']>;
  /** The photo. */
  readonly photoId: Scalars['ID']['input'];
  /** Revision the photo was read at; left out means no check. */
  readonly revision?: InputMaybe<Scalars['Int']['input']>;
};

/** What has become of a reminder. */
export type ReminderState =
  /** No longer wanted: done, passed or removed. */
  | 'cancelled'
  /** Not due yet, or about to fire. */
  | 'pending'
  /** It became a notice. */
  | 'sent'
  /** It could not fire while it was of use. */
  | 'tooLate';

/** A dependency to remove. */
export type RemoveLinkInput = {
  /** A new UUID for each change; repeat it to retry the same change. A repeated key has one effect and one answer. */
  readonly clientKey: Scalars['ID']['input'];
  /** Sent by an outbox, which repeats by itself and tells times by its own clock. A refusal is then kept under the key as well, so a late copy stays refused; a time up to five minutes ahead counts as now. */
  readonly fromOutbox?: InputMaybe<Scalars['Boolean']['input']>;
  /** The link. */
  readonly linkId: Scalars['ID']['input'];
  /** Revision that was read; checked when given. */
  readonly revision?: InputMaybe<Scalars['Int']['input']>;
};

/** A clearance that was asked for just now. */
export type RequestClearanceInput = {
  /** The clearance. */
  readonly clearanceId: Scalars['ID']['input'];
  /** A new UUID for each change; repeat it to retry the same change. A repeated key has one effect and one answer. */
  readonly clientKey: Scalars['ID']['input'];
  /** Sent by an outbox, which repeats by itself and tells times by its own clock. A refusal is then kept under the key as well, so a late copy stays refused; a time up to five minutes ahead counts as now. */
  readonly fromOutbox?: InputMaybe<Scalars['Boolean']['input']>;
  /** Revision that was read; checked when given. */
  readonly revision?: InputMaybe<Scalars['Int']['input']>;
};

/** Records that the authority was asked for a visit. */
export type RequestInspectionInput = {
  /** When it was asked; now when left out. */
  readonly at?: InputMaybe<Scalars['DateTime']['input']>;
  /** A new UUID for each change; repeat it to retry the same change. A repeated key has one effect and one answer. */
  readonly clientKey: Scalars['ID']['input'];
  /** Sent by an outbox, which repeats by itself and tells times by its own clock. A refusal is then kept under the key as well, so a late copy stays refused; a time up to five minutes ahead counts as now. */
  readonly fromOutbox?: InputMaybe<Scalars['Boolean']['input']>;
  /** The inspection. */
  readonly inspectionId: Scalars['ID']['input'];
  /** Revision it was read at; checked when given. */
  readonly revision?: InputMaybe<Scalars['Int']['input']>;
};

/** Revokes the token of a logger; what it posted stays. */
export type RevokeLoggerInput = {
  /** A new UUID for each change; repeat it to retry the same change. A repeated key has one effect and one answer. */
  readonly clientKey: Scalars['ID']['input'];
  /** Sent by an outbox, which repeats by itself and tells times by its own clock. A refusal is then kept under the key as well, so a late copy stays refused; a time up to five minutes ahead counts as now. */
  readonly fromOutbox?: InputMaybe<Scalars['Boolean']['input']>;
  /** The logger. */
  readonly loggerId: Scalars['ID']['input'];
  /** Revision it was read at; checked when given. */
  readonly revision?: InputMaybe<Scalars['Int']['input']>;
};

/** Takes a signed link back; every browser in which it is open is shut at once. */
export type RevokeSignedLinkInput = {
  /** A new UUID for each change; repeat it to retry the same change. A repeated key has one effect and one answer. */
  readonly clientKey: Scalars['ID']['input'];
  /** Sent by an outbox, which repeats by itself and tells times by its own clock. A refusal is then kept under the key as well, so a late copy stays refused; a time up to five minutes ahead counts as now. */
  readonly fromOutbox?: InputMaybe<Scalars['Boolean']['input']>;
  /** Revision it was read at; checked when given. */
  readonly revision?: InputMaybe<Scalars['Int']['input']>;
  /** The link. */
  readonly signedLinkId: Scalars['ID']['input'];
};

/** What a person does in the company, and so what they may change. */
export type Role =
  /** Works in a crew; reads the plan. */
  | 'crew'
  /** Is told when leads are ready, books and records hookups. */
  | 'electrician'
  /** Runs phases on site, decides hold points, calls weather holds. */
  | 'foreman'
  /** Enters jobs, schedules crews, decides proposals and waivers. */
  | 'office'
  /** Reads only. */
  | 'viewer';

/** A template to save; jobs made before keep what they have. */
export type SaveTemplateInput = {
  /** False keeps new jobs from using it. */
  readonly active?: InputMaybe<Scalars['Boolean']['input']>;
  /** The template as JSON text. */
  readonly body: Scalars['String']['input'];
  /** A new UUID for each change; repeat it to retry the same change. A repeated key has one effect and one answer. */
  readonly clientKey: Scalars['ID']['input'];
  /** Sent by an outbox, which repeats by itself and tells times by its own clock. A refusal is then kept under the key as well, so a late copy stays refused; a time up to five minutes ahead counts as now. */
  readonly fromOutbox?: InputMaybe<Scalars['Boolean']['input']>;
  /** Name, unique in the company. */
  readonly name: Scalars['String']['input'];
  /** Revision that was read; checked when given. */
  readonly revision?: InputMaybe<Scalars['Int']['input']>;
  /** Template to replace; a new one is made when left out. */
  readonly templateId?: InputMaybe<Scalars['ID']['input']>;
};

/** The weather limits of a kind of work, to use instead of those in force. */
export type SaveWeatherLimitsInput = {
  /** A new UUID for each change; repeat it to retry the same change. A repeated key has one effect and one answer. */
  readonly clientKey: Scalars['ID']['input'];
  /** Sent by an outbox, which repeats by itself and tells times by its own clock. A refusal is then kept under the key as well, so a late copy stays refused; a time up to five minutes ahead counts as now. */
  readonly fromOutbox?: InputMaybe<Scalars['Boolean']['input']>;
  /** Key of the set, as phases name it. */
  readonly key: Scalars['String']['input'];
  /** The limits as JSON, in the form that body of a set gives. */
  readonly limits: Scalars['String']['input'];
  /** Name as shown; left out keeps the one it has. */
  readonly name?: InputMaybe<Scalars['String']['input']>;
  /** What must be done, as JSON in the form that requirementsBody gives; left out keeps what is in force. */
  readonly requirements?: InputMaybe<Scalars['String']['input']>;
  /** Revision that was read; checked when given. */
  readonly revision?: InputMaybe<Scalars['Int']['input']>;
};

/** Hours of a crew on one day that differ from its week. */
export type SetCrewExceptionInput = {
  /** A new UUID for each change; repeat it to retry the same change. A repeated key has one effect and one answer. */
  readonly clientKey: Scalars['ID']['input'];
  /** The crew. */
  readonly crewId: Scalars['ID']['input'];
  /** The date as YYYY-MM-DD. */
  readonly day: Scalars['String']['input'];
  /** Sent by an outbox, which repeats by itself and tells times by its own clock. A refusal is then kept under the key as well, so a late copy stays refused; a time up to five minutes ahead counts as now. */
  readonly fromOutbox?: InputMaybe<Scalars['Boolean']['input']>;
  /** Hours of that day; none when the crew is off. */
  readonly hours: ReadonlyArray<HourRangeInput>;
  /** Why the hours differ. */
  readonly reason: Scalars['String']['input'];
};

/** How much of a kind of equipment the company owns; adds the kind when it is new. */
export type SetEquipmentInput = {
  /** A new UUID for each change; repeat it to retry the same change. A repeated key has one effect and one answer. */
  readonly clientKey: Scalars['ID']['input'];
  /** Sent by an outbox, which repeats by itself and tells times by its own clock. A refusal is then kept under the key as well, so a late copy stays refused; a time up to five minutes ahead counts as now. */
  readonly fromOutbox?: InputMaybe<Scalars['Boolean']['input']>;
  /** Key that templates ask for: blanket, enclosure, heater, ... */
  readonly kind: Scalars['String']['input'];
  /** Name as shown. */
  readonly name: Scalars['String']['input'];
  /** How much there is, 0 or more. */
  readonly quantity: Scalars['Int']['input'];
  /** Revision that was read; checked when given. */
  readonly revision?: InputMaybe<Scalars['Int']['input']>;
  /** Unit of the quantity: pieces, sq ft, ... */
  readonly unit: Scalars['String']['input'];
};

/** Who signs in. */
export type SignInInput = {
  /** E-mail address of the person. */
  readonly email: Scalars['String']['input'];
  /** Password of the person. */
  readonly password: Scalars['String']['input'];
};

/** A decision on a hold point, made where the work is. */
export type SiteDecision =
  /** Something must be put right. */
  | 'refused'
  /** What was measured is within its limits. */
  | 'released';

/** A search for a better plan to start. */
export type StartImprovementInput = {
  /** A new UUID for each change; repeat it to retry the same change. A repeated key has one effect and one answer. */
  readonly clientKey: Scalars['ID']['input'];
  /** Sent by an outbox, which repeats by itself and tells times by its own clock. A refusal is then kept under the key as well, so a late copy stays refused; a time up to five minutes ahead counts as now. */
  readonly fromOutbox?: InputMaybe<Scalars['Boolean']['input']>;
  /** Seconds it may search, 1 to 600; 20 when left out. */
  readonly seconds?: InputMaybe<Scalars['Int']['input']>;
  /** Seed of the search, from 0; the same seed on the same plan searches alike. Chosen when left out. */
  readonly seed?: InputMaybe<Scalars['Int']['input']>;
  /** What counts how much; as usual when left out. */
  readonly weights?: InputMaybe<PlanWeightsInput>;
};

/** Starts a phase. */
export type StartPhaseInput = {
  /** When it started; now when left out. */
  readonly at?: InputMaybe<Scalars['DateTime']['input']>;
  /** A new UUID for each change; repeat it to retry the same change. A repeated key has one effect and one answer. */
  readonly clientKey: Scalars['ID']['input'];
  /** Crew that starts it; left out, the one required, committed or planned. */
  readonly crewId?: InputMaybe<Scalars['ID']['input']>;
  /** Sent by an outbox, which repeats by itself and tells times by its own clock. A refusal is then kept under the key as well, so a late copy stays refused; a time up to five minutes ahead counts as now. */
  readonly fromOutbox?: InputMaybe<Scalars['Boolean']['input']>;
  /** The phase. */
  readonly phaseId: Scalars['ID']['input'];
  /** Revision it was read at; checked when given. */
  readonly revision?: InputMaybe<Scalars['Int']['input']>;
};

/** A search to stop. */
export type StopImprovementInput = {
  /** A new UUID for each change; repeat it to retry the same change. A repeated key has one effect and one answer. */
  readonly clientKey: Scalars['ID']['input'];
  /** Sent by an outbox, which repeats by itself and tells times by its own clock. A refusal is then kept under the key as well, so a late copy stays refused; a time up to five minutes ahead counts as now. */
  readonly fromOutbox?: InputMaybe<Scalars['Boolean']['input']>;
  /** What becomes of what it has found; kept when left out. */
  readonly how?: InputMaybe<ImprovementStop>;
  /** The search. */
  readonly improvementId: Scalars['ID']['input'];
};

/** Where the temperatures behind a strength come from. */
export type StrengthBasis =
  /** From temperatures read in the placement; can release a cure. */
  | 'measured'
  /** From assumed temperatures; dates the plan and releases nothing. */
  | 'predicted';

/** Which photo the owner of the house is to see no longer. */
export type TakeBackPhotoInput = {
  /** A new UUID for each change; repeat it to retry the same change. A repeated key has one effect and one answer. */
  readonly clientKey: Scalars['ID']['input'];
  /** Sent by an outbox, which repeats by itself and tells times by its own clock. A refusal is then kept under the key as well, so a late copy stays refused; a time up to five minutes ahead counts as now. */
  readonly fromOutbox?: InputMaybe<Scalars['Boolean']['input']>;
  /** The photo. */
  readonly photoId: Scalars['ID']['input'];
  /** Revision the photo was read at; left out means no check. */
  readonly revision?: InputMaybe<Scalars['Int']['input']>;
};

/** Records that the protection of a placement was taken off; its equipment is free then. */
export type TakeProtectionOffInput = {
  /** When it came off; now when left out. */
  readonly at?: InputMaybe<Scalars['DateTime']['input']>;
  /** A new UUID for each change; repeat it to retry the same change. A repeated key has one effect and one answer. */
  readonly clientKey: Scalars['ID']['input'];
  /** Sent by an outbox, which repeats by itself and tells times by its own clock. A refusal is then kept under the key as well, so a late copy stays refused; a time up to five minutes ahead counts as now. */
  readonly fromOutbox?: InputMaybe<Scalars['Boolean']['input']>;
  /** The placement. */
  readonly placementId: Scalars['ID']['input'];
  /** Why it comes off although the rules say it must stay; only the office may say so. */
  readonly reason?: InputMaybe<Scalars['String']['input']>;
  /** Revision it was read at; checked when given. */
  readonly revision?: InputMaybe<Scalars['Int']['input']>;
};

/** Tells how much work is left of a started phase. */
export type TellRemainingInput = {
  /** A new UUID for each change; repeat it to retry the same change. A repeated key has one effect and one answer. */
  readonly clientKey: Scalars['ID']['input'];
  /** Sent by an outbox, which repeats by itself and tells times by its own clock. A refusal is then kept under the key as well, so a late copy stays refused; a time up to five minutes ahead counts as now. */
  readonly fromOutbox?: InputMaybe<Scalars['Boolean']['input']>;
  /** The phase. */
  readonly phaseId: Scalars['ID']['input'];
  /** Minutes of work left for the crew. */
  readonly remainingMinutes: Scalars['Int']['input'];
  /** Revision the phase was read at; a phase that nobody touched since takes the value at once. */
  readonly revision?: InputMaybe<Scalars['Int']['input']>;
  /** The minutes that stood when this was told. */
  readonly seen?: InputMaybe<Scalars['Int']['input']>;
};

/** An acceptance to take back: what it replaced is set and promised again, and told again. */
export type UndoProposalInput = {
  /** A new UUID for each change; repeat it to retry the same change. A repeated key has one effect and one answer. */
  readonly clientKey: Scalars['ID']['input'];
  /** Sent by an outbox, which repeats by itself and tells times by its own clock. A refusal is then kept under the key as well, so a late copy stays refused; a time up to five minutes ahead counts as now. */
  readonly fromOutbox?: InputMaybe<Scalars['Boolean']['input']>;
  /** The accepted proposal. */
  readonly proposalId: Scalars['ID']['input'];
  /** Revision that was read; checked when given. */
  readonly revision?: InputMaybe<Scalars['Int']['input']>;
};

/** What changes in a crew; what is left out stays. */
export type UpdateCrewInput = {
  /** False takes it out of planning. */
  readonly active?: InputMaybe<Scalars['Boolean']['input']>;
  /** A new UUID for each change; repeat it to retry the same change. A repeated key has one effect and one answer. */
  readonly clientKey: Scalars['ID']['input'];
  /** The crew. */
  readonly crewId: Scalars['ID']['input'];
  /** Sent by an outbox, which repeats by itself and tells times by its own clock. A refusal is then kept under the key as well, so a late copy stays refused; a time up to five minutes ahead counts as now. */
  readonly fromOutbox?: InputMaybe<Scalars['Boolean']['input']>;
  /** New list of the people who work in it. */
  readonly memberIds?: InputMaybe<ReadonlyArray<Scalars['ID']['input']>>;
  /** New name. */
  readonly name?: InputMaybe<Scalars['String']['input']>;
  /** Revision that was read; checked when given. */
  readonly revision?: InputMaybe<Scalars['Int']['input']>;
  /** New number of people. */
  readonly size?: InputMaybe<Scalars['Int']['input']>;
  /** New list of what it can do. */
  readonly trades?: InputMaybe<ReadonlyArray<Scalars['String']['input']>>;
  /** New weekly hours. */
  readonly week?: InputMaybe<ReadonlyArray<DayHoursInput>>;
  /** New time zone. */
  readonly zone?: InputMaybe<Scalars['String']['input']>;
};

/** What changes in a job; what is left out stays. */
export type UpdateJobInput = {
  /** A new UUID for each change; repeat it to retry the same change. A repeated key has one effect and one answer. */
  readonly clientKey: Scalars['ID']['input'];
  /** New promised end; null takes the promise away. */
  readonly dueAt?: InputMaybe<Scalars['DateTime']['input']>;
  /** Sent by an outbox, which repeats by itself and tells times by its own clock. A refusal is then kept under the key as well, so a late copy stays refused; a time up to five minutes ahead counts as now. */
  readonly fromOutbox?: InputMaybe<Scalars['Boolean']['input']>;
  /** The job. */
  readonly jobId: Scalars['ID']['input'];
  /** New name. */
  readonly name?: InputMaybe<Scalars['String']['input']>;
  /** New name of the owner of the house. */
  readonly ownerName?: InputMaybe<Scalars['String']['input']>;
  /** New priority, 1 to 9. */
  readonly priority?: InputMaybe<Scalars['Int']['input']>;
  /** Revision that was read; checked when given. */
  readonly revision?: InputMaybe<Scalars['Int']['input']>;
};

/** What changes at a site; what is left out stays. */
export type UpdateSiteInput = {
  /** New street address. */
  readonly address?: InputMaybe<Scalars['String']['input']>;
  /** New authority; inspections of live jobs that were not requested yet move to it. */
  readonly authorityId?: InputMaybe<Scalars['ID']['input']>;
  /** A new UUID for each change; repeat it to retry the same change. A repeated key has one effect and one answer. */
  readonly clientKey: Scalars['ID']['input'];
  /** Sent by an outbox, which repeats by itself and tells times by its own clock. A refusal is then kept under the key as well, so a late copy stays refused; a time up to five minutes ahead counts as now. */
  readonly fromOutbox?: InputMaybe<Scalars['Boolean']['input']>;
  /** New frost depth in inches. */
  readonly frostDepthInches?: InputMaybe<Scalars['Float']['input']>;
  /** Where the new frost depth comes from. */
  readonly frostSource?: InputMaybe<Scalars['String']['input']>;
  /** New latitude. */
  readonly latitude?: InputMaybe<Scalars['Float']['input']>;
  /** New longitude. */
  readonly longitude?: InputMaybe<Scalars['Float']['input']>;
  /** Revision that was read; checked when given. */
  readonly revision?: InputMaybe<Scalars['Int']['input']>;
  /** The site. */
  readonly siteId: Scalars['ID']['input'];
  /** New town. */
  readonly town?: InputMaybe<Scalars['String']['input']>;
  /** New time zone. */
  readonly zone?: InputMaybe<Scalars['String']['input']>;
};

/** An hourly forecast of a site, to use from now on. */
export type UploadForecastInput = {
  /** A new UUID for each change; repeat it to retry the same change. A repeated key has one effect and one answer. */
  readonly clientKey: Scalars['ID']['input'];
  /** Form of the text. */
  readonly format: ForecastFormat;
  /** Sent by an outbox, which repeats by itself and tells times by its own clock. A refusal is then kept under the key as well, so a late copy stays refused; a time up to five minutes ahead counts as now. */
  readonly fromOutbox?: InputMaybe<Scalars['Boolean']['input']>;
  /** Site it is for. */
  readonly siteId: Scalars['ID']['input'];
  /** Where it comes from, in words. */
  readonly source: Scalars['String']['input'];
  /** The file as text. */
  readonly text: Scalars['String']['input'];
};

/** A broken rule of the design that the office goes on against. */
export type WaiveFindingInput = {
  /** A new UUID for each change; repeat it to retry the same change. A repeated key has one effect and one answer. */
  readonly clientKey: Scalars['ID']['input'];
  /** Sent by an outbox, which repeats by itself and tells times by its own clock. A refusal is then kept under the key as well, so a late copy stays refused; a time up to five minutes ahead counts as now. */
  readonly fromOutbox?: InputMaybe<Scalars['Boolean']['input']>;
  /** The job. */
  readonly jobId: Scalars['ID']['input'];
  /** Why the job goes on against it. */
  readonly reason: Scalars['String']['input'];
  /** Name of the rule, as its finding has it. */
  readonly rule: Scalars['String']['input'];
  /** Text of the finding, which says what it is about. */
  readonly text: Scalars['String']['input'];
};

/** Waives a hold point on the authority of the acting person. */
export type WaiveHoldPointInput = {
  /** A new UUID for each change; repeat it to retry the same change. A repeated key has one effect and one answer. */
  readonly clientKey: Scalars['ID']['input'];
  /** Sent by an outbox, which repeats by itself and tells times by its own clock. A refusal is then kept under the key as well, so a late copy stays refused; a time up to five minutes ahead counts as now. */
  readonly fromOutbox?: InputMaybe<Scalars['Boolean']['input']>;
  /** The hold point. */
  readonly holdPointId: Scalars['ID']['input'];
  /** Why it may be waived: at least ten characters. */
  readonly reason: Scalars['String']['input'];
  /** Revision it was read at; checked when given. */
  readonly revision?: InputMaybe<Scalars['Int']['input']>;
};

/** A phase that takes longer than thought. */
export type WhatIfDelayInput = {
  /** Minutes longer, from 15 up; counted in whole quarters of an hour. */
  readonly minutes: Scalars['Int']['input'];
  /** The phase. */
  readonly phaseId: Scalars['ID']['input'];
};

/** One more crew, like one there is. */
export type WhatIfExtraCrewInput = {
  /** The crew whose trades and hours it has. */
  readonly crewId: Scalars['ID']['input'];
};

/** What to suppose; what is given together is supposed together. Nothing is written. */
export type WhatIfInput = {
  /** A phase takes longer. */
  readonly delay?: InputMaybe<WhatIfDelayInput>;
  /** There is one more crew. */
  readonly extraCrew?: InputMaybe<WhatIfExtraCrewInput>;
  /** Time is lost. */
  readonly lostTime?: InputMaybe<WhatIfLostTimeInput>;
  /** A phase starts at another time. */
  readonly start?: InputMaybe<WhatIfStartInput>;
  /** A phase goes unprotected. */
  readonly withoutProtection?: InputMaybe<WhatIfWithoutProtectionInput>;
};

/** A stretch in which crews do not work. */
export type WhatIfLostTimeInput = {
  /** The one crew that loses it; left out for every crew. */
  readonly crewId?: InputMaybe<Scalars['ID']['input']>;
  /** First moment lost. */
  readonly from: Scalars['DateTime']['input'];
  /** When work goes on. */
  readonly to: Scalars['DateTime']['input'];
};

/** A start to try for a phase. */
export type WhatIfStartInput = {
  /** The phase. */
  readonly phaseId: Scalars['ID']['input'];
  /** The start, on a quarter of an hour. */
  readonly startAt: Scalars['DateTime']['input'];
};

/** A phase that goes without the equipment that protects it. */
export type WhatIfWithoutProtectionInput = {
  /** The phase. */
  readonly phaseId: Scalars['ID']['input'];
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
  readonly weatherLimitKey: string | null;
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
    readonly startBefore: string;
    readonly startAfter: string | null;
    readonly finishBefore: string;
    readonly finishAfter: string | null;
    readonly reason: { readonly text: string } | null;
    readonly phase: {
      readonly id: string;
      readonly name: string;
      readonly job: { readonly id: string; readonly number: number };
    } | null;
    readonly crewBefore: { readonly id: string; readonly name: string } | null;
    readonly crewAfter: { readonly id: string; readonly name: string } | null;
  }>;
  readonly jobFinishes: ReadonlyArray<{
    readonly before: string;
    readonly after: string | null;
    readonly job: { readonly id: string; readonly number: number; readonly name: string } | null;
  }>;
};

export type BoardQueryVariables = Exact<{
  from: Scalars['DateTime']['input'];
  to: Scalars['DateTime']['input'];
}>;

export type BoardQuery = {
  readonly board: {
    readonly from: string;
    readonly to: string;
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
      readonly weatherLimitKey: string | null;
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
        readonly startBefore: string;
        readonly startAfter: string | null;
        readonly finishBefore: string;
        readonly finishAfter: string | null;
        readonly reason: { readonly text: string } | null;
        readonly phase: {
          readonly id: string;
          readonly name: string;
          readonly job: { readonly id: string; readonly number: number };
        } | null;
        readonly crewBefore: { readonly id: string; readonly name: string } | null;
        readonly crewAfter: { readonly id: string; readonly name: string } | null;
      }>;
      readonly jobFinishes: ReadonlyArray<{
        readonly before: string;
        readonly after: string | null;
        readonly job: { readonly id: string; readonly number: number; readonly name: string } | null;
      }>;
    } | null;
  };
};

export type BoardWeatherQueryVariables = Exact<{
  from: Scalars['DateTime']['input'];
  to: Scalars['DateTime']['input'];
  since: Scalars['DateTime']['input'];
  ahead: Scalars['Boolean']['input'];
  jobIds: ReadonlyArray<Scalars['ID']['input']> | Scalars['ID']['input'];
  limitKeys: ReadonlyArray<Scalars['String']['input']> | Scalars['String']['input'];
}>;

export type BoardWeatherQuery = {
  readonly board: {
    readonly from: string;
    readonly to: string;
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
            readonly temperatureF: number | null;
            readonly windMph: number | null;
            readonly gustMph: number | null;
            readonly rainChance: number | null;
            readonly rainInches: number | null;
          }>;
        } | null;
        readonly weatherWindows?: ReadonlyArray<{
          readonly limitKey: string;
          readonly name: string;
          readonly protection: ReadonlyArray<string>;
          readonly issuedAt: string | null;
          readonly unknownAfter: string | null;
          readonly closed: ReadonlyArray<{
            readonly from: string;
            readonly to: string;
            readonly causes: ReadonlyArray<{
              readonly limitId: string;
              readonly text: string;
              readonly hour: string;
              readonly mark: string;
              readonly source: string;
            }>;
          }>;
          readonly requirements: ReadonlyArray<{
            readonly requirementId: string;
            readonly from: string;
            readonly to: string;
            readonly text: string;
            readonly known: boolean;
            readonly mark: string;
            readonly source: string;
            readonly cause: { readonly text: string; readonly hour: string } | null;
          }>;
          readonly unknown: ReadonlyArray<{ readonly from: string; readonly to: string }>;
        }>;
      };
    }>;
  };
};

export type WindowFieldsFragment = {
  readonly limitKey: string;
  readonly name: string;
  readonly protection: ReadonlyArray<string>;
  readonly issuedAt: string | null;
  readonly unknownAfter: string | null;
  readonly closed: ReadonlyArray<{
    readonly from: string;
    readonly to: string;
    readonly causes: ReadonlyArray<{
      readonly limitId: string;
      readonly text: string;
      readonly hour: string;
      readonly mark: string;
      readonly source: string;
    }>;
  }>;
  readonly requirements: ReadonlyArray<{
    readonly requirementId: string;
    readonly from: string;
    readonly to: string;
    readonly text: string;
    readonly known: boolean;
    readonly mark: string;
    readonly source: string;
    readonly cause: { readonly text: string; readonly hour: string } | null;
  }>;
  readonly unknown: ReadonlyArray<{ readonly from: string; readonly to: string }>;
};

export type PhaseWeatherQueryVariables = Exact<{
  phaseId: Scalars['ID']['input'];
  from: Scalars['DateTime']['input'];
  to: Scalars['DateTime']['input'];
}>;

export type PhaseWeatherQuery = {
  readonly phase: {
    readonly id: string;
    readonly weatherWindows: {
      readonly limitKey: string;
      readonly name: string;
      readonly protection: ReadonlyArray<string>;
      readonly issuedAt: string | null;
      readonly unknownAfter: string | null;
      readonly closed: ReadonlyArray<{
        readonly from: string;
        readonly to: string;
        readonly causes: ReadonlyArray<{
          readonly limitId: string;
          readonly text: string;
          readonly hour: string;
          readonly mark: string;
          readonly source: string;
        }>;
      }>;
      readonly requirements: ReadonlyArray<{
        readonly requirementId: string;
        readonly from: string;
        readonly to: string;
        readonly text: string;
        readonly known: boolean;
        readonly mark: string;
        readonly source: string;
        readonly cause: { readonly text: string; readonly hour: string } | null;
      }>;
      readonly unknown: ReadonlyArray<{ readonly from: string; readonly to: string }>;
    } | null;
  } | null;
};

export type ReasonsQueryVariables = Exact<{
  phaseId: Scalars['ID']['input'];
}>;

export type ReasonsQuery = {
  readonly explain: ReadonlyArray<{
    readonly kind: string;
    readonly text: string;
    readonly at: string | null;
    readonly alongside: ReadonlyArray<{ readonly text: string }>;
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
  readonly changed: {
    readonly changeNumber: string;
    readonly jobIds: ReadonlyArray<string>;
    readonly improvementId: string | null;
  };
};

export type FindingFieldsFragment = {
  readonly ok: boolean;
  readonly text: string;
  readonly measured: string;
  readonly limit: string;
  readonly mark: string;
  readonly source: string;
  readonly caution: string | null;
};

type RefusalFields_BeforePredecessor_Fragment = { readonly code: string; readonly message: string };

type RefusalFields_ClearanceMissing_Fragment = { readonly code: string; readonly message: string };

type RefusalFields_CrewBusy_Fragment = { readonly code: string; readonly message: string };

type RefusalFields_CureNotReached_Fragment = { readonly code: string; readonly message: string };

type RefusalFields_DesignBroken_Fragment = { readonly code: string; readonly message: string };

type RefusalFields_EquipmentOut_Fragment = { readonly code: string; readonly message: string };

type RefusalFields_FieldConflict_Fragment = { readonly code: string; readonly message: string };

type RefusalFields_HoldPointOpen_Fragment = { readonly code: string; readonly message: string };

type RefusalFields_ImprovementRunning_Fragment = { readonly code: string; readonly message: string };

type RefusalFields_InspectionOutstanding_Fragment = { readonly code: string; readonly message: string };

type RefusalFields_InvalidInput_Fragment = { readonly code: string; readonly message: string };

type RefusalFields_KeyReused_Fragment = { readonly code: string; readonly message: string };

type RefusalFields_LimitExceeded_Fragment = { readonly code: string; readonly message: string };

type RefusalFields_LinkCycle_Fragment = { readonly code: string; readonly message: string };

type RefusalFields_NeedsMissing_Fragment = { readonly code: string; readonly message: string };

type RefusalFields_NotFound_Fragment = { readonly code: string; readonly message: string };

type RefusalFields_NotWaivable_Fragment = { readonly code: string; readonly message: string };

type RefusalFields_NoticeTooShort_Fragment = { readonly code: string; readonly message: string };

type RefusalFields_OutsideVisitingHours_Fragment = { readonly code: string; readonly message: string };

type RefusalFields_PredecessorUnfinished_Fragment = { readonly code: string; readonly message: string };

type RefusalFields_ProposalOutdated_Fragment = { readonly code: string; readonly message: string };

type RefusalFields_ProtectionMustStay_Fragment = { readonly code: string; readonly message: string };

type RefusalFields_ReadingMissing_Fragment = { readonly code: string; readonly message: string };

type RefusalFields_StaleRevision_Fragment = { readonly code: string; readonly message: string };

type RefusalFields_UndoRefused_Fragment = { readonly code: string; readonly message: string };

type RefusalFields_WeatherHeld_Fragment = { readonly code: string; readonly message: string };

type RefusalFields_WrongState_Fragment = { readonly code: string; readonly message: string };

export type RefusalFieldsFragment =
  | RefusalFields_BeforePredecessor_Fragment
  | RefusalFields_ClearanceMissing_Fragment
  | RefusalFields_CrewBusy_Fragment
  | RefusalFields_CureNotReached_Fragment
  | RefusalFields_DesignBroken_Fragment
  | RefusalFields_EquipmentOut_Fragment
  | RefusalFields_FieldConflict_Fragment
  | RefusalFields_HoldPointOpen_Fragment
  | RefusalFields_ImprovementRunning_Fragment
  | RefusalFields_InspectionOutstanding_Fragment
  | RefusalFields_InvalidInput_Fragment
  | RefusalFields_KeyReused_Fragment
  | RefusalFields_LimitExceeded_Fragment
  | RefusalFields_LinkCycle_Fragment
  | RefusalFields_NeedsMissing_Fragment
  | RefusalFields_NotFound_Fragment
  | RefusalFields_NotWaivable_Fragment
  | RefusalFields_NoticeTooShort_Fragment
  | RefusalFields_OutsideVisitingHours_Fragment
  | RefusalFields_PredecessorUnfinished_Fragment
  | RefusalFields_ProposalOutdated_Fragment
  | RefusalFields_ProtectionMustStay_Fragment
  | RefusalFields_ReadingMissing_Fragment
  | RefusalFields_StaleRevision_Fragment
  | RefusalFields_UndoRefused_Fragment
  | RefusalFields_WeatherHeld_Fragment
  | RefusalFields_WrongState_Fragment;

export type ConflictFieldsFragment = {
  readonly field: string;
  readonly theirs: string;
  readonly mine: string;
  readonly standing: string | null;
  readonly changedBy: string | null;
  readonly currentRevision: number;
};

export type MarkPhaseMutationVariables = Exact<{
  input: MarkPhaseInput;
}>;

export type MarkPhaseMutation = {
  readonly outcome:
    | { readonly __typename: 'BeforePredecessor'; readonly code: string; readonly message: string }
    | { readonly __typename: 'ClearanceMissing'; readonly code: string; readonly message: string }
    | { readonly __typename: 'CrewBusy'; readonly code: string; readonly message: string }
    | { readonly __typename: 'DesignBroken'; readonly code: string; readonly message: string }
    | { readonly __typename: 'EquipmentOut'; readonly code: string; readonly message: string }
    | {
        readonly __typename: 'FieldConflict';
        readonly code: string;
        readonly message: string;
        readonly field: string;
        readonly theirs: string;
        readonly mine: string;
        readonly standing: string | null;
        readonly changedBy: string | null;
        readonly currentRevision: number;
      }
    | { readonly __typename: 'HoldPointOpen'; readonly code: string; readonly message: string }
    | { readonly __typename: 'InspectionOutstanding'; readonly code: string; readonly message: string }
    | { readonly __typename: 'InvalidInput'; readonly code: string; readonly message: string }
    | { readonly __typename: 'KeyReused'; readonly code: string; readonly message: string }
    | { readonly __typename: 'NeedsMissing'; readonly code: string; readonly message: string }
    | { readonly __typename: 'NotFound'; readonly code: string; readonly message: string }
    | { readonly __typename: 'PhaseSettled'; readonly answer: IntentAnswer }
    | { readonly __typename: 'PredecessorUnfinished'; readonly code: string; readonly message: string }
    | { readonly __typename: 'ReadingMissing'; readonly code: string; readonly message: string }
    | { readonly __typename: 'StaleRevision'; readonly code: string; readonly message: string }
    | { readonly __typename: 'WeatherHeld'; readonly code: string; readonly message: string }
    | { readonly __typename: 'WrongState'; readonly code: string; readonly message: string };
};

export type NotePhaseMutationVariables = Exact<{
  input: NotePhaseInput;
}>;

export type NotePhaseMutation = {
  readonly outcome:
    | {
        readonly __typename: 'FieldConflict';
        readonly code: string;
        readonly message: string;
        readonly field: string;
        readonly theirs: string;
        readonly mine: string;
        readonly standing: string | null;
        readonly changedBy: string | null;
        readonly currentRevision: number;
      }
    | { readonly __typename: 'InvalidInput'; readonly code: string; readonly message: string }
    | { readonly __typename: 'KeyReused'; readonly code: string; readonly message: string }
    | { readonly __typename: 'NotFound'; readonly code: string; readonly message: string }
    | { readonly __typename: 'PhaseSettled'; readonly answer: IntentAnswer }
    | { readonly __typename: 'StaleRevision'; readonly code: string; readonly message: string }
    | { readonly __typename: 'WrongState'; readonly code: string; readonly message: string };
};

export type TellRemainingMutationVariables = Exact<{
  input: TellRemainingInput;
}>;

export type TellRemainingMutation = {
  readonly outcome:
    | {
        readonly __typename: 'FieldConflict';
        readonly code: string;
        readonly message: string;
        readonly field: string;
        readonly theirs: string;
        readonly mine: string;
        readonly standing: string | null;
        readonly changedBy: string | null;
        readonly currentRevision: number;
      }
    | { readonly __typename: 'InvalidInput'; readonly code: string; readonly message: string }
    | { readonly __typename: 'KeyReused'; readonly code: string; readonly message: string }
    | { readonly __typename: 'NotFound'; readonly code: string; readonly message: string }
    | { readonly __typename: 'PhaseSettled'; readonly answer: IntentAnswer }
    | { readonly __typename: 'StaleRevision'; readonly code: string; readonly message: string }
    | { readonly __typename: 'WrongState'; readonly code: string; readonly message: string };
};

export type DecideHoldPointMutationVariables = Exact<{
  input: DecideHoldPointInput;
}>;

export type DecideHoldPointMutation = {
  readonly outcome:
    | { readonly __typename: 'ClearanceMissing'; readonly code: string; readonly message: string }
    | {
        readonly __typename: 'CureNotReached';
        readonly code: string;
        readonly message: string;
        readonly finding: {
          readonly ok: boolean;
          readonly text: string;
          readonly measured: string;
          readonly limit: string;
          readonly mark: string;
          readonly source: string;
          readonly caution: string | null;
        } | null;
      }
    | {
        readonly __typename: 'FieldConflict';
        readonly code: string;
        readonly message: string;
        readonly field: string;
        readonly theirs: string;
        readonly mine: string;
        readonly standing: string | null;
        readonly changedBy: string | null;
        readonly currentRevision: number;
      }
    | { readonly __typename: 'HoldPointSettled'; readonly answer: IntentAnswer }
    | { readonly __typename: 'InspectionOutstanding'; readonly code: string; readonly message: string }
    | { readonly __typename: 'InvalidInput'; readonly code: string; readonly message: string }
    | { readonly __typename: 'KeyReused'; readonly code: string; readonly message: string }
    | {
        readonly __typename: 'LimitExceeded';
        readonly code: string;
        readonly message: string;
        readonly findings: ReadonlyArray<{
          readonly ok: boolean;
          readonly text: string;
          readonly measured: string;
          readonly limit: string;
          readonly mark: string;
          readonly source: string;
          readonly caution: string | null;
        }>;
      }
    | { readonly __typename: 'NotFound'; readonly code: string; readonly message: string }
    | { readonly __typename: 'ReadingMissing'; readonly code: string; readonly message: string }
    | { readonly __typename: 'StaleRevision'; readonly code: string; readonly message: string }
    | { readonly __typename: 'WrongState'; readonly code: string; readonly message: string };
};

export type StartPhaseMutationVariables = Exact<{
  input: StartPhaseInput;
}>;

export type StartPhaseMutation = {
  readonly outcome:
    | { readonly __typename: 'BeforePredecessor'; readonly code: string; readonly message: string }
    | { readonly __typename: 'ClearanceMissing'; readonly code: string; readonly message: string }
    | { readonly __typename: 'CrewBusy'; readonly code: string; readonly message: string }
    | { readonly __typename: 'DesignBroken'; readonly code: string; readonly message: string }
    | { readonly __typename: 'EquipmentOut'; readonly code: string; readonly message: string }
    | { readonly __typename: 'HoldPointOpen'; readonly code: string; readonly message: string }
    | { readonly __typename: 'InspectionOutstanding'; readonly code: string; readonly message: string }
    | { readonly __typename: 'InvalidInput'; readonly code: string; readonly message: string }
    | { readonly __typename: 'KeyReused'; readonly code: string; readonly message: string }
    | { readonly __typename: 'NeedsMissing'; readonly code: string; readonly message: string }
    | { readonly __typename: 'NotFound'; readonly code: string; readonly message: string }
    | {
        readonly __typename: 'PhaseChanged';
        readonly phase: { readonly id: string; readonly name: string; readonly actualStart: string | null };
      }
    | { readonly __typename: 'PredecessorUnfinished'; readonly code: string; readonly message: string }
    | { readonly __typename: 'ReadingMissing'; readonly code: string; readonly message: string }
    | { readonly __typename: 'StaleRevision'; readonly code: string; readonly message: string }
    | { readonly __typename: 'WeatherHeld'; readonly code: string; readonly message: string }
    | { readonly __typename: 'WrongState'; readonly code: string; readonly message: string };
};

export type FinishPhaseMutationVariables = Exact<{
  input: FinishPhaseInput;
}>;

export type FinishPhaseMutation = {
  readonly outcome:
    | { readonly __typename: 'BeforePredecessor'; readonly code: string; readonly message: string }
    | { readonly __typename: 'ClearanceMissing'; readonly code: string; readonly message: string }
    | { readonly __typename: 'HoldPointOpen'; readonly code: string; readonly message: string }
    | { readonly __typename: 'InspectionOutstanding'; readonly code: string; readonly message: string }
    | { readonly __typename: 'InvalidInput'; readonly code: string; readonly message: string }
    | { readonly __typename: 'KeyReused'; readonly code: string; readonly message: string }
    | { readonly __typename: 'NotFound'; readonly code: string; readonly message: string }
    | {
        readonly __typename: 'PhaseChanged';
        readonly phase: { readonly id: string; readonly name: string; readonly actualFinish: string | null };
      }
    | { readonly __typename: 'PredecessorUnfinished'; readonly code: string; readonly message: string }
    | { readonly __typename: 'ReadingMissing'; readonly code: string; readonly message: string }
    | { readonly __typename: 'StaleRevision'; readonly code: string; readonly message: string }
    | { readonly __typename: 'WrongState'; readonly code: string; readonly message: string };
};

export type PutBackPhaseMutationVariables = Exact<{
  input: PutBackPhaseInput;
}>;

export type PutBackPhaseMutation = {
  readonly outcome:
    | { readonly __typename: 'CrewBusy'; readonly code: string; readonly message: string }
    | { readonly __typename: 'InvalidInput'; readonly code: string; readonly message: string }
    | { readonly __typename: 'KeyReused'; readonly code: string; readonly message: string }
    | { readonly __typename: 'NotFound'; readonly code: string; readonly message: string }
    | { readonly __typename: 'PhaseChanged' }
    | { readonly __typename: 'StaleRevision'; readonly code: string; readonly message: string }
    | { readonly __typename: 'WrongState'; readonly code: string; readonly message: string };
};

export type ReleaseHoldPointMutationVariables = Exact<{
  input: ReleaseHoldPointInput;
}>;

export type ReleaseHoldPointMutation = {
  readonly outcome:
    | { readonly __typename: 'ClearanceMissing'; readonly code: string; readonly message: string }
    | {
        readonly __typename: 'CureNotReached';
        readonly code: string;
        readonly message: string;
        readonly finding: {
          readonly ok: boolean;
          readonly text: string;
          readonly measured: string;
          readonly limit: string;
          readonly mark: string;
          readonly source: string;
          readonly caution: string | null;
        } | null;
      }
    | { readonly __typename: 'HoldPointChanged' }
    | { readonly __typename: 'InspectionOutstanding'; readonly code: string; readonly message: string }
    | { readonly __typename: 'InvalidInput'; readonly code: string; readonly message: string }
    | { readonly __typename: 'KeyReused'; readonly code: string; readonly message: string }
    | {
        readonly __typename: 'LimitExceeded';
        readonly code: string;
        readonly message: string;
        readonly findings: ReadonlyArray<{
          readonly ok: boolean;
          readonly text: string;
          readonly measured: string;
          readonly limit: string;
          readonly mark: string;
          readonly source: string;
          readonly caution: string | null;
        }>;
      }
    | { readonly __typename: 'NotFound'; readonly code: string; readonly message: string }
    | { readonly __typename: 'ReadingMissing'; readonly code: string; readonly message: string }
    | { readonly __typename: 'StaleRevision'; readonly code: string; readonly message: string }
    | { readonly __typename: 'WrongState'; readonly code: string; readonly message: string };
};

export type RefuseHoldPointMutationVariables = Exact<{
  input: RefuseHoldPointInput;
}>;

export type RefuseHoldPointMutation = {
  readonly outcome:
    | { readonly __typename: 'HoldPointChanged' }
    | { readonly __typename: 'InvalidInput'; readonly code: string; readonly message: string }
    | { readonly __typename: 'KeyReused'; readonly code: string; readonly message: string }
    | { readonly __typename: 'NotFound'; readonly code: string; readonly message: string }
    | { readonly __typename: 'StaleRevision'; readonly code: string; readonly message: string }
    | { readonly __typename: 'WrongState'; readonly code: string; readonly message: string };
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
            readonly measured: string;
            readonly limit: string;
            readonly mark: string;
            readonly source: string;
            readonly caution: string | null;
          }>;
        } | null;
      }
    | { readonly __typename: 'InvalidInput'; readonly code: string; readonly message: string }
    | { readonly __typename: 'KeyReused'; readonly code: string; readonly message: string }
    | { readonly __typename: 'NotFound'; readonly code: string; readonly message: string }
    | { readonly __typename: 'StaleRevision'; readonly code: string; readonly message: string }
    | { readonly __typename: 'WrongState'; readonly code: string; readonly message: string };
};

export type RecordTemperatureMutationVariables = Exact<{
  input: RecordTemperatureInput;
}>;

export type RecordTemperatureMutation = {
  readonly outcome:
    | { readonly __typename: 'InvalidInput'; readonly code: string; readonly message: string }
    | { readonly __typename: 'KeyReused'; readonly code: string; readonly message: string }
    | { readonly __typename: 'NotFound'; readonly code: string; readonly message: string }
    | { readonly __typename: 'PlacementChanged' }
    | { readonly __typename: 'StaleRevision'; readonly code: string; readonly message: string }
    | { readonly __typename: 'WrongState'; readonly code: string; readonly message: string };
};

export type CallWeatherHoldMutationVariables = Exact<{
  input: CallWeatherHoldInput;
}>;

export type CallWeatherHoldMutation = {
  readonly outcome:
    | { readonly __typename: 'InvalidInput'; readonly code: string; readonly message: string }
    | { readonly __typename: 'KeyReused'; readonly code: string; readonly message: string }
    | { readonly __typename: 'NotFound'; readonly code: string; readonly message: string }
    | { readonly __typename: 'StaleRevision'; readonly code: string; readonly message: string }
    | { readonly __typename: 'WeatherHoldChanged' }
    | { readonly __typename: 'WrongState'; readonly code: string; readonly message: string };
};

export type LiftWeatherHoldMutationVariables = Exact<{
  input: LiftWeatherHoldInput;
}>;

export type LiftWeatherHoldMutation = {
  readonly outcome:
    | { readonly __typename: 'InvalidInput'; readonly code: string; readonly message: string }
    | { readonly __typename: 'KeyReused'; readonly code: string; readonly message: string }
    | { readonly __typename: 'NotFound'; readonly code: string; readonly message: string }
    | { readonly __typename: 'StaleRevision'; readonly code: string; readonly message: string }
    | { readonly __typename: 'WeatherHoldChanged' }
    | { readonly __typename: 'WrongState'; readonly code: string; readonly message: string };
};

export type AcceptProposalMutationVariables = Exact<{
  input: AcceptProposalInput;
}>;

export type AcceptProposalMutation = {
  readonly outcome:
    | { readonly __typename: 'CrewBusy'; readonly code: string; readonly message: string }
    | { readonly __typename: 'InvalidInput'; readonly code: string; readonly message: string }
    | { readonly __typename: 'KeyReused'; readonly code: string; readonly message: string }
    | { readonly __typename: 'NotFound'; readonly code: string; readonly message: string }
    | { readonly __typename: 'ProposalDecided' }
    | { readonly __typename: 'ProposalOutdated'; readonly code: string; readonly message: string }
    | { readonly __typename: 'StaleRevision'; readonly code: string; readonly message: string };
};

export type DropProposalMutationVariables = Exact<{
  input: DropProposalInput;
}>;

export type DropProposalMutation = {
  readonly outcome:
    | { readonly __typename: 'InvalidInput'; readonly code: string; readonly message: string }
    | { readonly __typename: 'KeyReused'; readonly code: string; readonly message: string }
    | { readonly __typename: 'NotFound'; readonly code: string; readonly message: string }
    | { readonly __typename: 'ProposalDecided' }
    | { readonly __typename: 'ProposalOutdated'; readonly code: string; readonly message: string }
    | { readonly __typename: 'StaleRevision'; readonly code: string; readonly message: string };
};

export type CommitJobMutationVariables = Exact<{
  input: CommitJobInput;
}>;

export type CommitJobMutation = {
  readonly outcome:
    | { readonly __typename: 'BeforePredecessor'; readonly code: string; readonly message: string }
    | { readonly __typename: 'CommitmentChanged' }
    | { readonly __typename: 'CrewBusy'; readonly code: string; readonly message: string }
    | { readonly __typename: 'InvalidInput'; readonly code: string; readonly message: string }
    | { readonly __typename: 'KeyReused'; readonly code: string; readonly message: string }
    | { readonly __typename: 'NotFound'; readonly code: string; readonly message: string }
    | { readonly __typename: 'StaleRevision'; readonly code: string; readonly message: string }
    | { readonly __typename: 'WrongState'; readonly code: string; readonly message: string };
};

export type BookHookupMutationVariables = Exact<{
  input: BookHookupInput;
}>;

export type BookHookupMutation = {
  readonly outcome:
    | { readonly __typename: 'HookupChanged' }
    | { readonly __typename: 'InvalidInput'; readonly code: string; readonly message: string }
    | { readonly __typename: 'KeyReused'; readonly code: string; readonly message: string }
    | { readonly __typename: 'NeedsMissing'; readonly code: string; readonly message: string }
    | { readonly __typename: 'NotFound'; readonly code: string; readonly message: string }
    | { readonly __typename: 'StaleRevision'; readonly code: string; readonly message: string }
    | { readonly __typename: 'WrongState'; readonly code: string; readonly message: string };
};

export type RecordHookupMutationVariables = Exact<{
  input: RecordHookupInput;
}>;

export type RecordHookupMutation = {
  readonly outcome:
    | { readonly __typename: 'BeforePredecessor'; readonly code: string; readonly message: string }
    | { readonly __typename: 'ClearanceMissing'; readonly code: string; readonly message: string }
    | {
        readonly __typename: 'DesignBroken';
        readonly code: string;
        readonly message: string;
        readonly findings: ReadonlyArray<{
          readonly ok: boolean;
          readonly text: string;
          readonly measured: string;
          readonly limit: string;
          readonly mark: string;
          readonly source: string;
          readonly caution: string | null;
        }>;
      }
    | { readonly __typename: 'HoldPointOpen'; readonly code: string; readonly message: string }
    | { readonly __typename: 'HookupChanged' }
    | { readonly __typename: 'InspectionOutstanding'; readonly code: string; readonly message: string }
    | { readonly __typename: 'InvalidInput'; readonly code: string; readonly message: string }
    | { readonly __typename: 'KeyReused'; readonly code: string; readonly message: string }
    | {
        readonly __typename: 'LimitExceeded';
        readonly code: string;
        readonly message: string;
        readonly findings: ReadonlyArray<{
          readonly ok: boolean;
          readonly text: string;
          readonly measured: string;
          readonly limit: string;
          readonly mark: string;
          readonly source: string;
          readonly caution: string | null;
        }>;
      }
    | { readonly __typename: 'NeedsMissing'; readonly code: string; readonly message: string }
    | { readonly __typename: 'NotFound'; readonly code: string; readonly message: string }
    | { readonly __typename: 'PredecessorUnfinished'; readonly code: string; readonly message: string }
    | { readonly __typename: 'ReadingMissing'; readonly code: string; readonly message: string }
    | { readonly __typename: 'StaleRevision'; readonly code: string; readonly message: string }
    | { readonly __typename: 'WrongState'; readonly code: string; readonly message: string };
};

export type StartImprovementMutationVariables = Exact<{
  input: StartImprovementInput;
}>;

export type StartImprovementMutation = {
  readonly outcome:
    | { readonly __typename: 'ImprovementChanged' }
    | { readonly __typename: 'ImprovementRunning'; readonly code: string; readonly message: string }
    | { readonly __typename: 'InvalidInput'; readonly code: string; readonly message: string }
    | { readonly __typename: 'KeyReused'; readonly code: string; readonly message: string }
    | { readonly __typename: 'NotFound'; readonly code: string; readonly message: string }
    | { readonly __typename: 'StaleRevision'; readonly code: string; readonly message: string };
};

export type StopImprovementMutationVariables = Exact<{
  input: StopImprovementInput;
}>;

export type StopImprovementMutation = {
  readonly outcome:
    | { readonly __typename: 'ImprovementChanged' }
    | { readonly __typename: 'InvalidInput'; readonly code: string; readonly message: string }
    | { readonly __typename: 'KeyReused'; readonly code: string; readonly message: string }
    | { readonly __typename: 'NotFound'; readonly code: string; readonly message: string }
    | { readonly __typename: 'StaleRevision'; readonly code: string; readonly message: string }
    | { readonly __typename: 'WrongState'; readonly code: string; readonly message: string };
};

export type ProposeMoveMutationVariables = Exact<{
  input: ProposeMoveInput;
}>;

export type ProposeMoveMutation = {
  readonly outcome:
    | { readonly __typename: 'InvalidInput'; readonly code: string; readonly message: string }
    | { readonly __typename: 'KeyReused'; readonly code: string; readonly message: string }
    | { readonly __typename: 'MoveProposed' }
    | { readonly __typename: 'NotFound'; readonly code: string; readonly message: string }
    | { readonly __typename: 'StaleRevision'; readonly code: string; readonly message: string }
    | { readonly __typename: 'WrongState'; readonly code: string; readonly message: string };
};

export type UndoProposalMutationVariables = Exact<{
  input: UndoProposalInput;
}>;

export type UndoProposalMutation = {
  readonly outcome:
    | { readonly __typename: 'CrewBusy'; readonly code: string; readonly message: string }
    | { readonly __typename: 'InvalidInput'; readonly code: string; readonly message: string }
    | { readonly __typename: 'KeyReused'; readonly code: string; readonly message: string }
    | { readonly __typename: 'NotFound'; readonly code: string; readonly message: string }
    | { readonly __typename: 'ProposalDecided' }
    | { readonly __typename: 'StaleRevision'; readonly code: string; readonly message: string }
    | { readonly __typename: 'UndoRefused'; readonly code: string; readonly message: string };
};

export type ReleasePhotoMutationVariables = Exact<{
  input: ReleasePhotoInput;
}>;

export type ReleasePhotoMutation = {
  readonly outcome:
    | { readonly __typename: 'InvalidInput'; readonly code: string; readonly message: string }
    | { readonly __typename: 'KeyReused'; readonly code: string; readonly message: string }
    | { readonly __typename: 'NotFound'; readonly code: string; readonly message: string }
    | { readonly __typename: 'PhotoChanged' }
    | { readonly __typename: 'StaleRevision'; readonly code: string; readonly message: string };
};

export type TakeBackPhotoMutationVariables = Exact<{
  input: TakeBackPhotoInput;
}>;

export type TakeBackPhotoMutation = {
  readonly outcome:
    | { readonly __typename: 'InvalidInput'; readonly code: string; readonly message: string }
    | { readonly __typename: 'KeyReused'; readonly code: string; readonly message: string }
    | { readonly __typename: 'NotFound'; readonly code: string; readonly message: string }
    | { readonly __typename: 'PhotoChanged' }
    | { readonly __typename: 'StaleRevision'; readonly code: string; readonly message: string };
};

export type OutlookFieldsFragment = {
  readonly requiredPsi: number;
  readonly hoursToFirstFreeze: number | null;
  readonly method: string;
  readonly assumption: string;
  readonly mark: string;
  readonly source: string;
  readonly caution: string;
  readonly airKnownUntil: string | null;
  readonly release: {
    readonly at: string;
    readonly basis: StrengthBasis;
    readonly coldestF: number | null;
    readonly psi: number | null;
  } | null;
  readonly firstFreeze: {
    readonly at: string;
    readonly basis: StrengthBasis;
    readonly coldestF: number | null;
    readonly psi: number | null;
  } | null;
  readonly lowest: {
    readonly at: string;
    readonly basis: StrengthBasis;
    readonly coldestF: number | null;
    readonly psi: number | null;
  };
  readonly freezes: {
    readonly at: string;
    readonly basis: StrengthBasis;
    readonly coldestF: number | null;
    readonly psi: number | null;
  } | null;
  readonly points: ReadonlyArray<{
    readonly at: string;
    readonly basis: StrengthBasis;
    readonly temperatureF: number;
    readonly coldestF: number;
    readonly airF: number | null;
    readonly psi: number;
  }>;
};

export type AlarmFieldsFragment = {
  readonly id: string;
  readonly kind: string;
  readonly openedAt: string;
  readonly finding: {
    readonly text: string;
    readonly measured: string;
    readonly limit: string;
    readonly mark: string;
    readonly source: string;
    readonly caution: string | null;
  };
};

export type PlacementCureQueryVariables = Exact<{
  id: Scalars['ID']['input'];
  from: Scalars['DateTime']['input'];
  to: Scalars['DateTime']['input'];
}>;

export type PlacementCureQuery = {
  readonly board: { readonly now: string };
  readonly placement: {
    readonly id: string;
    readonly revision: number;
    readonly material: string;
    readonly placedAt: string;
    readonly protectionOffAt: string | null;
    readonly protectionOffReason: string | null;
    readonly cautions: ReadonlyArray<string>;
    readonly protectionPlan: {
      readonly text: string;
      readonly kinds: ReadonlyArray<string>;
      readonly blanketLayers: number;
      readonly blanketR: number;
      readonly enclosureF: number | null;
      readonly heatHours: number;
    };
    readonly protectionOff: {
      readonly ok: boolean;
      readonly text: string;
      readonly measured: string;
      readonly limit: string;
      readonly mark: string;
      readonly source: string;
      readonly caution: string | null;
    } | null;
    readonly alarms: ReadonlyArray<{
      readonly id: string;
      readonly kind: string;
      readonly openedAt: string;
      readonly finding: {
        readonly text: string;
        readonly measured: string;
        readonly limit: string;
        readonly mark: string;
        readonly source: string;
        readonly caution: string | null;
      };
    }>;
    readonly outlook: {
      readonly requiredPsi: number;
      readonly hoursToFirstFreeze: number | null;
      readonly method: string;
      readonly assumption: string;
      readonly mark: string;
      readonly source: string;
      readonly caution: string;
      readonly airKnownUntil: string | null;
      readonly release: {
        readonly at: string;
        readonly basis: StrengthBasis;
        readonly coldestF: number | null;
        readonly psi: number | null;
      } | null;
      readonly firstFreeze: {
        readonly at: string;
        readonly basis: StrengthBasis;
        readonly coldestF: number | null;
        readonly psi: number | null;
      } | null;
      readonly lowest: {
        readonly at: string;
        readonly basis: StrengthBasis;
        readonly coldestF: number | null;
        readonly psi: number | null;
      };
      readonly freezes: {
        readonly at: string;
        readonly basis: StrengthBasis;
        readonly coldestF: number | null;
        readonly psi: number | null;
      } | null;
      readonly points: ReadonlyArray<{
        readonly at: string;
        readonly basis: StrengthBasis;
        readonly temperatureF: number;
        readonly coldestF: number;
        readonly airF: number | null;
        readonly psi: number;
      }>;
    };
  } | null;
};

export type BranchFieldsFragment = {
  readonly branch: ProtectionBranch;
  readonly placedAt: string | null;
  readonly curedAt: string | null;
  readonly jobFinish: string | null;
  readonly allFinish: string | null;
  readonly equipmentDays: number;
  readonly heatingHours: number;
  readonly weatherUnknown: boolean;
  readonly conflicts: number;
  readonly cautions: ReadonlyArray<string>;
  readonly protection: { readonly text: string };
  readonly placing: {
    readonly ok: boolean;
    readonly text: string;
    readonly measured: string;
    readonly limit: string;
    readonly mark: string;
    readonly source: string;
    readonly caution: string | null;
  } | null;
  readonly outlook: {
    readonly requiredPsi: number;
    readonly hoursToFirstFreeze: number | null;
    readonly method: string;
    readonly assumption: string;
    readonly mark: string;
    readonly source: string;
    readonly caution: string;
    readonly airKnownUntil: string | null;
    readonly release: {
      readonly at: string;
      readonly basis: StrengthBasis;
      readonly coldestF: number | null;
      readonly psi: number | null;
    } | null;
    readonly firstFreeze: {
      readonly at: string;
      readonly basis: StrengthBasis;
      readonly coldestF: number | null;
      readonly psi: number | null;
    } | null;
    readonly lowest: {
      readonly at: string;
      readonly basis: StrengthBasis;
      readonly coldestF: number | null;
      readonly psi: number | null;
    };
    readonly freezes: {
      readonly at: string;
      readonly basis: StrengthBasis;
      readonly coldestF: number | null;
      readonly psi: number | null;
    } | null;
    readonly points: ReadonlyArray<{
      readonly at: string;
      readonly basis: StrengthBasis;
      readonly temperatureF: number;
      readonly coldestF: number;
      readonly airF: number | null;
      readonly psi: number;
    }>;
  } | null;
};

export type ProtectOrWaitQueryVariables = Exact<{
  input: ProtectOrWaitInput;
}>;

export type ProtectOrWaitQuery = {
  readonly protectOrWait: {
    readonly cold: boolean;
    readonly coldRule: string;
    readonly protect: {
      readonly branch: ProtectionBranch;
      readonly placedAt: string | null;
      readonly curedAt: string | null;
      readonly jobFinish: string | null;
      readonly allFinish: string | null;
      readonly equipmentDays: number;
      readonly heatingHours: number;
      readonly weatherUnknown: boolean;
      readonly conflicts: number;
      readonly cautions: ReadonlyArray<string>;
      readonly protection: { readonly text: string };
      readonly placing: {
        readonly ok: boolean;
        readonly text: string;
        readonly measured: string;
        readonly limit: string;
        readonly mark: string;
        readonly source: string;
        readonly caution: string | null;
      } | null;
      readonly outlook: {
        readonly requiredPsi: number;
        readonly hoursToFirstFreeze: number | null;
        readonly method: string;
        readonly assumption: string;
        readonly mark: string;
        readonly source: string;
        readonly caution: string;
        readonly airKnownUntil: string | null;
        readonly release: {
          readonly at: string;
          readonly basis: StrengthBasis;
          readonly coldestF: number | null;
          readonly psi: number | null;
        } | null;
        readonly firstFreeze: {
          readonly at: string;
          readonly basis: StrengthBasis;
          readonly coldestF: number | null;
          readonly psi: number | null;
        } | null;
        readonly lowest: {
          readonly at: string;
          readonly basis: StrengthBasis;
          readonly coldestF: number | null;
          readonly psi: number | null;
        };
        readonly freezes: {
          readonly at: string;
          readonly basis: StrengthBasis;
          readonly coldestF: number | null;
          readonly psi: number | null;
        } | null;
        readonly points: ReadonlyArray<{
          readonly at: string;
          readonly basis: StrengthBasis;
          readonly temperatureF: number;
          readonly coldestF: number;
          readonly airF: number | null;
          readonly psi: number;
        }>;
      } | null;
    };
    readonly wait: {
      readonly branch: ProtectionBranch;
      readonly placedAt: string | null;
      readonly curedAt: string | null;
      readonly jobFinish: string | null;
      readonly allFinish: string | null;
      readonly equipmentDays: number;
      readonly heatingHours: number;
      readonly weatherUnknown: boolean;
      readonly conflicts: number;
      readonly cautions: ReadonlyArray<string>;
      readonly protection: { readonly text: string };
      readonly placing: {
        readonly ok: boolean;
        readonly text: string;
        readonly measured: string;
        readonly limit: string;
        readonly mark: string;
        readonly source: string;
        readonly caution: string | null;
      } | null;
      readonly outlook: {
        readonly requiredPsi: number;
        readonly hoursToFirstFreeze: number | null;
        readonly method: string;
        readonly assumption: string;
        readonly mark: string;
        readonly source: string;
        readonly caution: string;
        readonly airKnownUntil: string | null;
        readonly release: {
          readonly at: string;
          readonly basis: StrengthBasis;
          readonly coldestF: number | null;
          readonly psi: number | null;
        } | null;
        readonly firstFreeze: {
          readonly at: string;
          readonly basis: StrengthBasis;
          readonly coldestF: number | null;
          readonly psi: number | null;
        } | null;
        readonly lowest: {
          readonly at: string;
          readonly basis: StrengthBasis;
          readonly coldestF: number | null;
          readonly psi: number | null;
        };
        readonly freezes: {
          readonly at: string;
          readonly basis: StrengthBasis;
          readonly coldestF: number | null;
          readonly psi: number | null;
        } | null;
        readonly points: ReadonlyArray<{
          readonly at: string;
          readonly basis: StrengthBasis;
          readonly temperatureF: number;
          readonly coldestF: number;
          readonly airF: number | null;
          readonly psi: number;
        }>;
      } | null;
    };
    readonly bare: {
      readonly requiredPsi: number;
      readonly hoursToFirstFreeze: number | null;
      readonly method: string;
      readonly assumption: string;
      readonly mark: string;
      readonly source: string;
      readonly caution: string;
      readonly airKnownUntil: string | null;
      readonly release: {
        readonly at: string;
        readonly basis: StrengthBasis;
        readonly coldestF: number | null;
        readonly psi: number | null;
      } | null;
      readonly firstFreeze: {
        readonly at: string;
        readonly basis: StrengthBasis;
        readonly coldestF: number | null;
        readonly psi: number | null;
      } | null;
      readonly lowest: {
        readonly at: string;
        readonly basis: StrengthBasis;
        readonly coldestF: number | null;
        readonly psi: number | null;
      };
      readonly freezes: {
        readonly at: string;
        readonly basis: StrengthBasis;
        readonly coldestF: number | null;
        readonly psi: number | null;
      } | null;
      readonly points: ReadonlyArray<{
        readonly at: string;
        readonly basis: StrengthBasis;
        readonly temperatureF: number;
        readonly coldestF: number;
        readonly airF: number | null;
        readonly psi: number;
      }>;
    } | null;
    readonly jobs: ReadonlyArray<{
      readonly protectFinish: string | null;
      readonly waitFinish: string | null;
      readonly waitLaterMinutes: number | null;
      readonly job: { readonly id: string; readonly number: number; readonly name: string };
    }>;
    readonly phase: {
      readonly id: string;
      readonly protectionChoice: {
        readonly id: string;
        readonly branch: ProtectionBranch;
        readonly chosenAt: string;
        readonly reason: string | null;
        readonly by: { readonly id: string; readonly name: string } | null;
      } | null;
    };
  } | null;
};

export type RecordPlacementMutationVariables = Exact<{
  input: RecordPlacementInput;
}>;

export type RecordPlacementMutation = {
  readonly outcome:
    | { readonly __typename: 'InvalidInput'; readonly code: string; readonly message: string }
    | { readonly __typename: 'KeyReused'; readonly code: string; readonly message: string }
    | { readonly __typename: 'NotFound'; readonly code: string; readonly message: string }
    | { readonly __typename: 'PlacementChanged' }
    | { readonly __typename: 'StaleRevision'; readonly code: string; readonly message: string }
    | { readonly __typename: 'WrongState'; readonly code: string; readonly message: string };
};

export type ChangeProtectionMutationVariables = Exact<{
  input: ChangeProtectionInput;
}>;

export type ChangeProtectionMutation = {
  readonly outcome:
    | { readonly __typename: 'InvalidInput'; readonly code: string; readonly message: string }
    | { readonly __typename: 'KeyReused'; readonly code: string; readonly message: string }
    | { readonly __typename: 'NotFound'; readonly code: string; readonly message: string }
    | { readonly __typename: 'PlacementChanged' }
    | { readonly __typename: 'StaleRevision'; readonly code: string; readonly message: string }
    | { readonly __typename: 'WrongState'; readonly code: string; readonly message: string };
};

export type TakeProtectionOffMutationVariables = Exact<{
  input: TakeProtectionOffInput;
}>;

export type TakeProtectionOffMutation = {
  readonly outcome:
    | { readonly __typename: 'InvalidInput'; readonly code: string; readonly message: string }
    | { readonly __typename: 'KeyReused'; readonly code: string; readonly message: string }
    | { readonly __typename: 'NotFound'; readonly code: string; readonly message: string }
    | { readonly __typename: 'PlacementChanged' }
    | {
        readonly __typename: 'ProtectionMustStay';
        readonly code: string;
        readonly message: string;
        readonly finding: {
          readonly ok: boolean;
          readonly text: string;
          readonly measured: string;
          readonly limit: string;
          readonly mark: string;
          readonly source: string;
          readonly caution: string | null;
        };
      }
    | { readonly __typename: 'StaleRevision'; readonly code: string; readonly message: string }
    | { readonly __typename: 'WrongState'; readonly code: string; readonly message: string };
};

export type ChooseProtectionMutationVariables = Exact<{
  input: ChooseProtectionInput;
}>;

export type ChooseProtectionMutation = {
  readonly outcome:
    | { readonly __typename: 'InvalidInput'; readonly code: string; readonly message: string }
    | { readonly __typename: 'KeyReused'; readonly code: string; readonly message: string }
    | { readonly __typename: 'NotFound'; readonly code: string; readonly message: string }
    | { readonly __typename: 'ProtectionChosen' }
    | { readonly __typename: 'StaleRevision'; readonly code: string; readonly message: string }
    | { readonly __typename: 'WrongState'; readonly code: string; readonly message: string };
};

export type RevokeLoggerMutationVariables = Exact<{
  input: RevokeLoggerInput;
}>;

export type RevokeLoggerMutation = {
  readonly outcome:
    | { readonly __typename: 'InvalidInput'; readonly code: string; readonly message: string }
    | { readonly __typename: 'KeyReused'; readonly code: string; readonly message: string }
    | { readonly __typename: 'LoggerChanged' }
    | { readonly __typename: 'NotFound'; readonly code: string; readonly message: string }
    | { readonly __typename: 'StaleRevision'; readonly code: string; readonly message: string }
    | { readonly __typename: 'WrongState'; readonly code: string; readonly message: string };
};

export type RegisterLoggerMutationVariables = Exact<{
  input: RegisterLoggerInput;
}>;

export type RegisterLoggerMutation = {
  readonly outcome:
    | { readonly __typename: 'InvalidInput'; readonly code: string; readonly message: string }
    | { readonly __typename: 'KeyReused'; readonly code: string; readonly message: string }
    | {
        readonly __typename: 'LoggerRegistered';
        readonly token: string | null;
        readonly path: string;
        readonly logger: { readonly id: string; readonly name: string };
      }
    | { readonly __typename: 'NotFound'; readonly code: string; readonly message: string }
    | { readonly __typename: 'StaleRevision'; readonly code: string; readonly message: string };
};

export type EnteringQueryVariables = Exact<{ [key: string]: never }>;

export type EnteringQuery = {
  readonly crews: ReadonlyArray<{
    readonly id: string;
    readonly name: string;
    readonly trades: ReadonlyArray<string>;
    readonly size: number;
    readonly active: boolean;
  }>;
  readonly equipmentPools: ReadonlyArray<{
    readonly id: string;
    readonly kind: string;
    readonly name: string;
    readonly quantity: number;
    readonly unit: string;
  }>;
  readonly authorities: ReadonlyArray<{
    readonly id: string;
    readonly name: string;
    readonly noticeHours: number;
    readonly visitMinutes: number;
    readonly phone: string | null;
  }>;
  readonly sites: {
    readonly edges: ReadonlyArray<{
      readonly node: {
        readonly id: string;
        readonly address: string;
        readonly town: string;
        readonly frostDepthInches: number;
        readonly frostSource: string;
        readonly authority: { readonly id: string; readonly name: string } | null;
      };
    }>;
  };
  readonly jobs: {
    readonly edges: ReadonlyArray<{
      readonly node: {
        readonly id: string;
        readonly number: number;
        readonly name: string;
        readonly plannedFinish: string | null;
        readonly committedFinish: string | null;
      };
    }>;
  };
};

export type FaultFieldsFragment = {
  readonly faults: ReadonlyArray<{ readonly path: string; readonly message: string }>;
};

export type CreateCrewMutationVariables = Exact<{
  input: CreateCrewInput;
}>;

export type CreateCrewMutation = {
  readonly outcome:
    | { readonly __typename: 'CrewChanged' }
    | {
        readonly __typename: 'InvalidInput';
        readonly code: string;
        readonly message: string;
        readonly faults: ReadonlyArray<{ readonly path: string; readonly message: string }>;
      }
    | { readonly __typename: 'KeyReused'; readonly code: string; readonly message: string }
    | { readonly __typename: 'NotFound'; readonly code: string; readonly message: string }
    | { readonly __typename: 'StaleRevision'; readonly code: string; readonly message: string };
};

export type SetEquipmentMutationVariables = Exact<{
  input: SetEquipmentInput;
}>;

export type SetEquipmentMutation = {
  readonly outcome:
    | { readonly __typename: 'EquipmentChanged' }
    | {
        readonly __typename: 'InvalidInput';
        readonly code: string;
        readonly message: string;
        readonly faults: ReadonlyArray<{ readonly path: string; readonly message: string }>;
      }
    | { readonly __typename: 'KeyReused'; readonly code: string; readonly message: string }
    | { readonly __typename: 'NotFound'; readonly code: string; readonly message: string }
    | { readonly __typename: 'StaleRevision'; readonly code: string; readonly message: string };
};

export type CreateAuthorityMutationVariables = Exact<{
  input: CreateAuthorityInput;
}>;

export type CreateAuthorityMutation = {
  readonly outcome:
    | { readonly __typename: 'AuthorityChanged' }
    | {
        readonly __typename: 'InvalidInput';
        readonly code: string;
        readonly message: string;
        readonly faults: ReadonlyArray<{ readonly path: string; readonly message: string }>;
      }
    | { readonly __typename: 'KeyReused'; readonly code: string; readonly message: string }
    | { readonly __typename: 'NotFound'; readonly code: string; readonly message: string }
    | { readonly __typename: 'StaleRevision'; readonly code: string; readonly message: string };
};

export type CreateSiteMutationVariables = Exact<{
  input: CreateSiteInput;
}>;

export type CreateSiteMutation = {
  readonly outcome:
    | {
        readonly __typename: 'InvalidInput';
        readonly code: string;
        readonly message: string;
        readonly faults: ReadonlyArray<{ readonly path: string; readonly message: string }>;
      }
    | { readonly __typename: 'KeyReused'; readonly code: string; readonly message: string }
    | { readonly __typename: 'NotFound'; readonly code: string; readonly message: string }
    | { readonly __typename: 'SiteChanged'; readonly site: { readonly id: string } }
    | { readonly __typename: 'StaleRevision'; readonly code: string; readonly message: string };
};

export type CreateJobMutationVariables = Exact<{
  input: CreateJobInput;
}>;

export type CreateJobMutation = {
  readonly outcome:
    | {
        readonly __typename: 'InvalidInput';
        readonly code: string;
        readonly message: string;
        readonly faults: ReadonlyArray<{ readonly path: string; readonly message: string }>;
      }
    | { readonly __typename: 'JobChanged'; readonly job: { readonly id: string; readonly number: number } }
    | { readonly __typename: 'KeyReused'; readonly code: string; readonly message: string }
    | { readonly __typename: 'NotFound'; readonly code: string; readonly message: string }
    | { readonly __typename: 'StaleRevision'; readonly code: string; readonly message: string };
};

export type EntryDesignQueryVariables = Exact<{
  number: Scalars['Int']['input'];
}>;

export type EntryDesignQuery = {
  readonly jobByNumber: {
    readonly id: string;
    readonly number: number;
    readonly name: string;
    readonly ownerName: string;
    readonly site: { readonly id: string; readonly address: string; readonly town: string };
    readonly findings: ReadonlyArray<{
      readonly rule: string;
      readonly blocks: ReadonlyArray<string> | null;
      readonly waived: string | null;
      readonly waivedAt: string | null;
      readonly ok: boolean;
      readonly text: string;
      readonly measured: string;
      readonly limit: string;
      readonly mark: string;
      readonly source: string;
      readonly caution: string | null;
      readonly waivedBy: { readonly id: string; readonly name: string } | null;
    }>;
    readonly design: {
      readonly heat: ReadonlyArray<{
        readonly areaKey: string;
        readonly areaName: string;
        readonly sensible: number;
        readonly melting: number;
        readonly convectionAndRadiation: number;
        readonly evaporation: number;
        readonly back: number;
        readonly edge: number;
        readonly total: number;
        readonly given: number;
        readonly warmUpHours: number | null;
        readonly sources: ReadonlyArray<string>;
      }>;
      readonly cables: ReadonlyArray<{
        readonly setKey: string;
        readonly setName: string;
        readonly asMeasured: boolean;
        readonly feet: number | null;
        readonly closest: number | null;
        readonly tightestBend: number | null;
        readonly coldLeadOutside: number | null;
        readonly fields: ReadonlyArray<{
          readonly key: string;
          readonly feet: number;
          readonly meanSpacing: number | null;
          readonly wattsPerSquareFoot: number;
          readonly widestGap: number;
        }>;
      }>;
      readonly circuits: ReadonlyArray<{
        readonly zone: string;
        readonly sets: ReadonlyArray<string>;
        readonly watts: number;
        readonly load: number;
        readonly designLoad: number | null;
        readonly breaker: number | null;
        readonly conductorAwg: number | null;
        readonly terminals: number | null;
        readonly source: string | null;
        readonly caution: string;
      }>;
      readonly risers: {
        readonly count: number;
        readonly advice: ReadonlyArray<string>;
        readonly steps: ReadonlyArray<{
          readonly riser: number;
          readonly finished: number;
          readonly blockTop: number;
          readonly courses: string;
        }>;
      } | null;
      readonly footing: {
        readonly width: number;
        readonly thickness: number;
        readonly bottom: number;
        readonly frostDepth: number;
        readonly frostSource: string;
        readonly concrete: string;
        readonly checklist: ReadonlyArray<{
          readonly key: string;
          readonly text: string;
          readonly source: string;
        }>;
      } | null;
      readonly drawings: ReadonlyArray<{
        readonly key: string;
        readonly title: string;
        readonly scale: number;
        readonly width: number;
        readonly height: number;
        readonly svg: string;
      }>;
    } | null;
  } | null;
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
    readonly leadsPass: string | null;
    readonly readyAt: string | null;
    readonly bookedFor: string | null;
    readonly bookedBy: string | null;
    readonly doneAt: string | null;
    readonly doneBy: string | null;
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
        readonly warnings: ReadonlyArray<string>;
        readonly area: { readonly id: string; readonly name: string } | null;
        readonly findings: ReadonlyArray<{
          readonly ok: boolean;
          readonly text: string;
          readonly measured: string;
          readonly limit: string;
          readonly mark: string;
          readonly source: string;
          readonly caution: string | null;
        }>;
      }>;
    };
    readonly electrician: { readonly id: string; readonly name: string } | null;
    readonly job: {
      readonly id: string;
      readonly number: number;
      readonly name: string;
      readonly site: { readonly id: string; readonly address: string; readonly town: string };
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

export type DesignFindingFieldsFragment = {
  readonly rule: string;
  readonly blocks: ReadonlyArray<string> | null;
  readonly waived: string | null;
  readonly waivedAt: string | null;
  readonly ok: boolean;
  readonly text: string;
  readonly measured: string;
  readonly limit: string;
  readonly mark: string;
  readonly source: string;
  readonly caution: string | null;
  readonly waivedBy: { readonly id: string; readonly name: string } | null;
};

export type JobDesignQueryVariables = Exact<{
  number: Scalars['Int']['input'];
}>;

export type JobDesignQuery = {
  readonly jobByNumber: {
    readonly id: string;
    readonly revision: number;
    readonly measurement: string;
    readonly findings: ReadonlyArray<{
      readonly rule: string;
      readonly blocks: ReadonlyArray<string> | null;
      readonly waived: string | null;
      readonly waivedAt: string | null;
      readonly ok: boolean;
      readonly text: string;
      readonly measured: string;
      readonly limit: string;
      readonly mark: string;
      readonly source: string;
      readonly caution: string | null;
      readonly waivedBy: { readonly id: string; readonly name: string } | null;
    }>;
    readonly buyList: ReadonlyArray<{
      readonly key: string;
      readonly label: string;
      readonly measured: number;
      readonly needed: number;
      readonly unit: string;
      readonly waste: number;
      readonly pieces: number;
      readonly soldAs: string;
      readonly mark: string;
    }>;
  } | null;
};

export type WaiveFindingMutationVariables = Exact<{
  input: WaiveFindingInput;
}>;

export type WaiveFindingMutation = {
  readonly outcome:
    | { readonly __typename: 'InvalidInput'; readonly code: string; readonly message: string }
    | { readonly __typename: 'JobChanged' }
    | { readonly __typename: 'KeyReused'; readonly code: string; readonly message: string }
    | { readonly __typename: 'NotFound'; readonly code: string; readonly message: string }
    | { readonly __typename: 'NotWaivable'; readonly code: string; readonly message: string }
    | { readonly __typename: 'StaleRevision'; readonly code: string; readonly message: string }
    | { readonly __typename: 'WrongState'; readonly code: string; readonly message: string };
};

export type CorrectMeasurementMutationVariables = Exact<{
  input: CorrectMeasurementInput;
}>;

export type CorrectMeasurementMutation = {
  readonly outcome:
    | { readonly __typename: 'InvalidInput'; readonly code: string; readonly message: string }
    | { readonly __typename: 'JobChanged' }
    | { readonly __typename: 'KeyReused'; readonly code: string; readonly message: string }
    | { readonly __typename: 'NotFound'; readonly code: string; readonly message: string }
    | { readonly __typename: 'StaleRevision'; readonly code: string; readonly message: string }
    | { readonly __typename: 'WrongState'; readonly code: string; readonly message: string };
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
      readonly loggers: ReadonlyArray<{
        readonly id: string;
        readonly name: string;
        readonly lastPostAt: string | null;
        readonly revokedAt: string | null;
        readonly revision: number;
        readonly placement: { readonly id: string } | null;
      }>;
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
        readonly measured: string;
        readonly limit: string;
        readonly mark: string;
        readonly source: string;
        readonly caution: string | null;
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
        readonly warnings: ReadonlyArray<string>;
        readonly area: { readonly id: string; readonly name: string } | null;
        readonly findings: ReadonlyArray<{
          readonly ok: boolean;
          readonly text: string;
          readonly measured: string;
          readonly limit: string;
          readonly mark: string;
          readonly source: string;
          readonly caution: string | null;
        }>;
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
        readonly logger: { readonly id: string; readonly name: string } | null;
      }>;
      readonly strength: {
        readonly psi: number;
        readonly requiredPsi: number;
        readonly basis: StrengthBasis;
        readonly method: string;
        readonly mark: string;
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
    readonly warnings: ReadonlyArray<string>;
    readonly area: { readonly id: string; readonly name: string } | null;
    readonly findings: ReadonlyArray<{
      readonly ok: boolean;
      readonly text: string;
      readonly measured: string;
      readonly limit: string;
      readonly mark: string;
      readonly source: string;
      readonly caution: string | null;
    }>;
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
        readonly byLink: string | null;
        readonly person: { readonly id: string; readonly name: string } | null;
      };
    }>;
    readonly pageInfo: { readonly hasNextPage: boolean };
  };
};

export type PhotoFieldsFragment = {
  readonly id: string;
  readonly caption: string | null;
  readonly takenAt: string;
  readonly smallPath: string;
  readonly path: string;
  readonly width: number;
  readonly height: number;
  readonly takenBy: { readonly id: string; readonly name: string } | null;
};

export type JobPhotosQueryVariables = Exact<{
  number: Scalars['Int']['input'];
}>;

export type JobPhotosQuery = {
  readonly jobByNumber: {
    readonly id: string;
    readonly photos: ReadonlyArray<{
      readonly releasedAt: string | null;
      readonly revision: number;
      readonly id: string;
      readonly caption: string | null;
      readonly takenAt: string;
      readonly smallPath: string;
      readonly path: string;
      readonly width: number;
      readonly height: number;
      readonly phase: {
        readonly id: string;
        readonly name: string;
        readonly area: { readonly id: string; readonly name: string } | null;
      } | null;
      readonly takenBy: { readonly id: string; readonly name: string } | null;
    }>;
  } | null;
};

export type CostPartsFragment = {
  readonly latenessHours: number;
  readonly finishHours: number;
  readonly disturbanceHours: number;
  readonly crewMoves: number;
  readonly unplanned: number;
};

export type NewestImprovementQueryVariables = Exact<{ [key: string]: never }>;

export type NewestImprovementQuery = {
  readonly newestImprovement: {
    readonly id: string;
    readonly state: ImprovementState;
    readonly seconds: number;
    readonly schedules: number;
    readonly stopping: boolean;
    readonly message: string | null;
    readonly progress: { readonly seconds: number; readonly withinPercent: number | null } | null;
    readonly outcome: {
      readonly withinPercent: number | null;
      readonly proved: boolean;
      readonly factsMoved: boolean;
      readonly before: {
        readonly latenessHours: number;
        readonly finishHours: number;
        readonly disturbanceHours: number;
        readonly crewMoves: number;
        readonly unplanned: number;
      };
      readonly after: {
        readonly latenessHours: number;
        readonly finishHours: number;
        readonly disturbanceHours: number;
        readonly crewMoves: number;
        readonly unplanned: number;
      };
    } | null;
    readonly proposal: {
      readonly id: string;
      readonly number: number;
      readonly cause: string;
      readonly createdAt: string;
      readonly revision: number;
      readonly state: ProposalState;
      readonly differences: ReadonlyArray<{
        readonly startBefore: string;
        readonly startAfter: string | null;
        readonly finishBefore: string;
        readonly finishAfter: string | null;
        readonly reason: { readonly text: string } | null;
        readonly phase: {
          readonly id: string;
          readonly name: string;
          readonly job: { readonly id: string; readonly number: number };
        } | null;
        readonly crewBefore: { readonly id: string; readonly name: string } | null;
        readonly crewAfter: { readonly id: string; readonly name: string } | null;
      }>;
      readonly jobFinishes: ReadonlyArray<{
        readonly before: string;
        readonly after: string | null;
        readonly job: { readonly id: string; readonly number: number; readonly name: string } | null;
      }>;
      readonly jobEnds: ReadonlyArray<{
        readonly before: string | null;
        readonly after: string | null;
        readonly job: { readonly id: string; readonly number: number; readonly name: string } | null;
      }>;
      readonly moves: ReadonlyArray<{
        readonly startBefore: string | null;
        readonly startAfter: string | null;
        readonly phase: {
          readonly id: string;
          readonly name: string;
          readonly job: { readonly id: string; readonly number: number };
        } | null;
        readonly crewBefore: { readonly id: string; readonly name: string } | null;
        readonly crewAfter: { readonly id: string; readonly name: string } | null;
        readonly reason: { readonly text: string } | null;
      }>;
    } | null;
  } | null;
};

export type OfferedPlanFragment = {
  readonly state: ProposalState;
  readonly jobEnds: ReadonlyArray<{
    readonly before: string | null;
    readonly after: string | null;
    readonly job: { readonly id: string; readonly number: number; readonly name: string } | null;
  }>;
  readonly moves: ReadonlyArray<{
    readonly startBefore: string | null;
    readonly startAfter: string | null;
    readonly phase: {
      readonly id: string;
      readonly name: string;
      readonly job: { readonly id: string; readonly number: number };
    } | null;
    readonly crewBefore: { readonly id: string; readonly name: string } | null;
    readonly crewAfter: { readonly id: string; readonly name: string } | null;
    readonly reason: { readonly text: string } | null;
  }>;
};

export type NewestMoveQueryVariables = Exact<{ [key: string]: never }>;

export type NewestMoveQuery = {
  readonly newestMove: {
    readonly id: string;
    readonly state: ProposedMoveState;
    readonly way: MoveWay;
    readonly startAt: string;
    readonly message: string | null;
    readonly phase: {
      readonly id: string;
      readonly name: string;
      readonly job: { readonly id: string; readonly number: number };
    } | null;
    readonly crew: { readonly id: string; readonly name: string } | null;
    readonly proposal: {
      readonly undoable: boolean;
      readonly id: string;
      readonly number: number;
      readonly cause: string;
      readonly createdAt: string;
      readonly revision: number;
      readonly state: ProposalState;
      readonly differences: ReadonlyArray<{
        readonly startBefore: string;
        readonly startAfter: string | null;
        readonly finishBefore: string;
        readonly finishAfter: string | null;
        readonly reason: { readonly text: string } | null;
        readonly phase: {
          readonly id: string;
          readonly name: string;
          readonly job: { readonly id: string; readonly number: number };
        } | null;
        readonly crewBefore: { readonly id: string; readonly name: string } | null;
        readonly crewAfter: { readonly id: string; readonly name: string } | null;
      }>;
      readonly jobFinishes: ReadonlyArray<{
        readonly before: string;
        readonly after: string | null;
        readonly job: { readonly id: string; readonly number: number; readonly name: string } | null;
      }>;
      readonly jobEnds: ReadonlyArray<{
        readonly before: string | null;
        readonly after: string | null;
        readonly job: { readonly id: string; readonly number: number; readonly name: string } | null;
      }>;
      readonly moves: ReadonlyArray<{
        readonly startBefore: string | null;
        readonly startAfter: string | null;
        readonly phase: {
          readonly id: string;
          readonly name: string;
          readonly job: { readonly id: string; readonly number: number };
        } | null;
        readonly crewBefore: { readonly id: string; readonly name: string } | null;
        readonly crewAfter: { readonly id: string; readonly name: string } | null;
        readonly reason: { readonly text: string } | null;
      }>;
    } | null;
  } | null;
};

export type PlanInputQueryVariables = Exact<{ [key: string]: never }>;

export type PlanInputQuery = {
  readonly planInput: {
    readonly planNumber: number;
    readonly startsAt: string;
    readonly slotMinutes: number;
    readonly json: string | null;
  };
};

export type PlanRiskQueryVariables = Exact<{ [key: string]: never }>;

export type PlanRiskQuery = {
  readonly planRisk: {
    readonly samples: number;
    readonly assumptions: ReadonlyArray<string>;
    readonly jobs: ReadonlyArray<{
      readonly planned: string | null;
      readonly half: {
        readonly at: string | null;
        readonly low: string | null;
        readonly high: string | null;
      };
      readonly fourFifths: {
        readonly at: string | null;
        readonly low: string | null;
        readonly high: string | null;
      };
      readonly fan: ReadonlyArray<{ readonly share: number; readonly at: string | null }>;
      readonly dueKept: { readonly chance: number; readonly low: number; readonly high: number } | null;
      readonly causes: ReadonlyArray<{ readonly source: string; readonly share: number }>;
      readonly job: {
        readonly id: string;
        readonly number: number;
        readonly name: string;
        readonly dueAt: string | null;
      } | null;
    }>;
  };
};

export type WithoutProtectionQueryVariables = Exact<{
  phaseId: Scalars['ID']['input'];
}>;

export type WithoutProtectionQuery = {
  readonly whatIf:
    | { readonly __typename: 'InvalidInput'; readonly code: string; readonly message: string }
    | { readonly __typename: 'NotFound'; readonly code: string; readonly message: string }
    | {
        readonly __typename: 'Supposed';
        readonly jobs: ReadonlyArray<{
          readonly before: string | null;
          readonly after: string | null;
          readonly laterMinutes: number | null;
          readonly dueMissedBefore: boolean;
          readonly dueMissedAfter: boolean;
          readonly job: { readonly id: string; readonly number: number; readonly name: string } | null;
        }>;
        readonly phases: ReadonlyArray<{ readonly startAfter: string | null }>;
        readonly conflictsAdded: ReadonlyArray<{ readonly text: string }>;
        readonly conflictsRemoved: ReadonlyArray<{ readonly text: string }>;
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

export type SheetHeadFieldsFragment = {
  readonly recipient: string;
  readonly companyName: string;
  readonly askName: string | null;
  readonly askEmail: string | null;
  readonly jobName: string;
  readonly jobState: JobState;
  readonly address: string;
  readonly town: string;
  readonly zone: string;
  readonly expiresAt: string;
  readonly now: string;
};

export type LinkPhotoFieldsFragment = {
  readonly id: string;
  readonly caption: string | null;
  readonly takenAt: string;
  readonly path: string;
  readonly smallPath: string;
  readonly width: number;
  readonly height: number;
};

export type HookupSheetQueryVariables = Exact<{ [key: string]: never }>;

export type HookupSheetQuery = {
  readonly hookupSheet: {
    readonly head: {
      readonly jobNumber: number;
      readonly recipient: string;
      readonly companyName: string;
      readonly askName: string | null;
      readonly askEmail: string | null;
      readonly jobName: string;
      readonly jobState: JobState;
      readonly address: string;
      readonly town: string;
      readonly zone: string;
      readonly expiresAt: string;
      readonly now: string;
    };
    readonly photos: ReadonlyArray<{
      readonly id: string;
      readonly caption: string | null;
      readonly takenAt: string;
      readonly path: string;
      readonly smallPath: string;
      readonly width: number;
      readonly height: number;
    }>;
    readonly hookups: ReadonlyArray<{
      readonly id: string;
      readonly state: HookupState;
      readonly coldLeadThrough: boolean;
      readonly coldLeadFreeInches: number | null;
      readonly sensorThrough: boolean;
      readonly leadsLabelled: boolean;
      readonly leadsPass: string | null;
      readonly readyAt: string | null;
      readonly bookedFor: string | null;
      readonly bookedBy: string | null;
      readonly doneAt: string | null;
      readonly doneBy: string | null;
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
          readonly warnings: ReadonlyArray<string>;
          readonly area: { readonly id: string; readonly name: string } | null;
          readonly findings: ReadonlyArray<{
            readonly ok: boolean;
            readonly text: string;
            readonly measured: string;
            readonly limit: string;
            readonly mark: string;
            readonly source: string;
            readonly caution: string | null;
          }>;
        }>;
      };
    }>;
  };
};

export type OwnerWeekQueryVariables = Exact<{ [key: string]: never }>;

export type OwnerWeekQuery = {
  readonly ownerWeek: {
    readonly summary: string;
    readonly walk: string;
    readonly heat: string;
    readonly heatCaution: string | null;
    readonly head: {
      readonly recipient: string;
      readonly companyName: string;
      readonly askName: string | null;
      readonly askEmail: string | null;
      readonly jobName: string;
      readonly jobState: JobState;
      readonly address: string;
      readonly town: string;
      readonly zone: string;
      readonly expiresAt: string;
      readonly now: string;
    };
    readonly days: ReadonlyArray<{
      readonly date: string;
      readonly lines: ReadonlyArray<string>;
      readonly keepClear: ReadonlyArray<string>;
      readonly weather: ReadonlyArray<string>;
    }>;
    readonly photos: ReadonlyArray<{
      readonly id: string;
      readonly caption: string | null;
      readonly takenAt: string;
      readonly path: string;
      readonly smallPath: string;
      readonly width: number;
      readonly height: number;
    }>;
  };
};

export type JobLinksQueryVariables = Exact<{
  number: Scalars['Int']['input'];
}>;

export type JobLinksQuery = {
  readonly jobByNumber: {
    readonly id: string;
    readonly ownerName: string;
    readonly signedLinks: ReadonlyArray<{
      readonly id: string;
      readonly purpose: LinkPurpose;
      readonly recipient: string;
      readonly state: LinkState;
      readonly createdAt: string;
      readonly expiresAt: string;
      readonly revokedAt: string | null;
      readonly browsers: number;
      readonly lastOpenedAt: string | null;
      readonly madeBy: string;
      readonly refusedOpenings: number;
      readonly revision: number;
    }>;
  } | null;
};

export type MakeSignedLinkMutationVariables = Exact<{
  input: MakeSignedLinkInput;
}>;

export type MakeSignedLinkMutation = {
  readonly outcome:
    | { readonly __typename: 'InvalidInput'; readonly code: string; readonly message: string }
    | { readonly __typename: 'KeyReused'; readonly code: string; readonly message: string }
    | { readonly __typename: 'NotFound'; readonly code: string; readonly message: string }
    | {
        readonly __typename: 'SignedLinkMade';
        readonly address: string | null;
        readonly signedLink: { readonly id: string };
      }
    | { readonly __typename: 'StaleRevision'; readonly code: string; readonly message: string }
    | { readonly __typename: 'WrongState'; readonly code: string; readonly message: string };
};

export type RevokeSignedLinkMutationVariables = Exact<{
  input: RevokeSignedLinkInput;
}>;

export type RevokeSignedLinkMutation = {
  readonly outcome:
    | { readonly __typename: 'InvalidInput'; readonly code: string; readonly message: string }
    | { readonly __typename: 'KeyReused'; readonly code: string; readonly message: string }
    | { readonly __typename: 'NotFound'; readonly code: string; readonly message: string }
    | { readonly __typename: 'SignedLinkChanged' }
    | { readonly __typename: 'StaleRevision'; readonly code: string; readonly message: string }
    | { readonly __typename: 'WrongState'; readonly code: string; readonly message: string };
};

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
    readonly remainingMinutes: number | null;
    readonly note: string | null;
    readonly revision: number;
    readonly job: {
      readonly id: string;
      readonly number: number;
      readonly name: string;
      readonly placements: ReadonlyArray<{
        readonly id: string;
        readonly placedAt: string;
        readonly phase: { readonly id: string; readonly name: string };
        readonly alarms: ReadonlyArray<{
          readonly id: string;
          readonly kind: string;
          readonly openedAt: string;
          readonly finding: {
            readonly text: string;
            readonly measured: string;
            readonly limit: string;
            readonly mark: string;
            readonly source: string;
            readonly caution: string | null;
          };
        }>;
        readonly strength: {
          readonly psi: number;
          readonly requiredPsi: number;
          readonly basis: StrengthBasis;
          readonly method: string;
          readonly mark: string;
          readonly caution: string;
        };
      }>;
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
    readonly weatherWindows: {
      readonly limitKey: string;
      readonly name: string;
      readonly protection: ReadonlyArray<string>;
      readonly issuedAt: string | null;
      readonly unknownAfter: string | null;
      readonly closed: ReadonlyArray<{
        readonly from: string;
        readonly to: string;
        readonly causes: ReadonlyArray<{
          readonly limitId: string;
          readonly text: string;
          readonly hour: string;
          readonly mark: string;
          readonly source: string;
        }>;
      }>;
      readonly requirements: ReadonlyArray<{
        readonly requirementId: string;
        readonly from: string;
        readonly to: string;
        readonly text: string;
        readonly known: boolean;
        readonly mark: string;
        readonly source: string;
        readonly cause: { readonly text: string; readonly hour: string } | null;
      }>;
      readonly unknown: ReadonlyArray<{ readonly from: string; readonly to: string }>;
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
    readonly photos: ReadonlyArray<{
      readonly id: string;
      readonly caption: string | null;
      readonly takenAt: string;
      readonly smallPath: string;
      readonly path: string;
      readonly width: number;
      readonly height: number;
      readonly takenBy: { readonly id: string; readonly name: string } | null;
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
  weatherLimitKey
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
    reason {
      text
    }
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
export const WindowFieldsFragmentDoc = new TypedDocumentString(
  `
    fragment WindowFields on WeatherWindows {
  limitKey
  name
  protection
  issuedAt
  unknownAfter
  closed {
    from
    to
    causes {
      limitId
      text
      hour
      mark
      source
    }
  }
  requirements {
    requirementId
    from
    to
    text
    known
    mark
    source
    cause {
      text
      hour
    }
  }
  unknown {
    from
    to
  }
}
    `,
  { fragmentName: 'WindowFields' },
) as unknown as TypedDocumentString<WindowFieldsFragment, unknown>;
export const RefusalFieldsFragmentDoc = new TypedDocumentString(
  `
    fragment RefusalFields on Refusal {
  code
  message
}
    `,
  { fragmentName: 'RefusalFields' },
) as unknown as TypedDocumentString<RefusalFieldsFragment, unknown>;
export const ConflictFieldsFragmentDoc = new TypedDocumentString(
  `
    fragment ConflictFields on FieldConflict {
  field
  theirs
  mine
  standing
  changedBy
  currentRevision
}
    `,
  { fragmentName: 'ConflictFields' },
) as unknown as TypedDocumentString<ConflictFieldsFragment, unknown>;
export const OutlookFieldsFragmentDoc = new TypedDocumentString(
  `
    fragment OutlookFields on CureOutlook {
  requiredPsi
  hoursToFirstFreeze
  method
  assumption
  mark
  source
  caution
  airKnownUntil
  release {
    at
    basis
    coldestF
    psi
  }
  firstFreeze {
    at
    basis
    coldestF
    psi
  }
  lowest {
    at
    basis
    coldestF
    psi
  }
  freezes {
    at
    basis
    coldestF
    psi
  }
  points {
    at
    basis
    temperatureF
    coldestF
    airF
    psi
  }
}
    `,
  { fragmentName: 'OutlookFields' },
) as unknown as TypedDocumentString<OutlookFieldsFragment, unknown>;
export const AlarmFieldsFragmentDoc = new TypedDocumentString(
  `
    fragment AlarmFields on CureAlarm {
  id
  kind
  openedAt
  finding {
    text
    measured
    limit
    mark
    source
    caution
  }
}
    `,
  { fragmentName: 'AlarmFields' },
) as unknown as TypedDocumentString<AlarmFieldsFragment, unknown>;
export const BranchFieldsFragmentDoc = new TypedDocumentString(
  `
    fragment BranchFields on BranchOutlook {
  branch
  placedAt
  curedAt
  jobFinish
  allFinish
  equipmentDays
  heatingHours
  weatherUnknown
  conflicts
  cautions
  protection {
    text
  }
  placing {
    ok
    text
    measured
    limit
    mark
    source
    caution
  }
  outlook {
    requiredPsi
    hoursToFirstFreeze
    method
    assumption
    mark
    source
    caution
    airKnownUntil
    release {
      at
      basis
      coldestF
      psi
    }
    firstFreeze {
      at
      basis
      coldestF
      psi
    }
    lowest {
      at
      basis
      coldestF
      psi
    }
    freezes {
      at
      basis
      coldestF
      psi
    }
    points {
      at
      basis
      temperatureF
      coldestF
      airF
      psi
    }
  }
}
    `,
  { fragmentName: 'BranchFields' },
) as unknown as TypedDocumentString<BranchFieldsFragment, unknown>;
export const FaultFieldsFragmentDoc = new TypedDocumentString(
  `
    fragment FaultFields on InvalidInput {
  faults {
    path
    message
  }
}
    `,
  { fragmentName: 'FaultFields' },
) as unknown as TypedDocumentString<FaultFieldsFragment, unknown>;
export const FindingFieldsFragmentDoc = new TypedDocumentString(
  `
    fragment FindingFields on Finding {
  ok
  text
  measured
  limit
  mark
  source
  caution
}
    `,
  { fragmentName: 'FindingFields' },
) as unknown as TypedDocumentString<FindingFieldsFragment, unknown>;
export const DesignFindingFieldsFragmentDoc = new TypedDocumentString(
  `
    fragment DesignFindingFields on Finding {
  rule
  ...FindingFields
  blocks
  waived
  waivedAt
  waivedBy {
    id
    name
  }
}
    fragment FindingFields on Finding {
  ok
  text
  measured
  limit
  mark
  source
  caution
}`,
  { fragmentName: 'DesignFindingFields' },
) as unknown as TypedDocumentString<DesignFindingFieldsFragment, unknown>;
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
    warnings
    area {
      id
      name
    }
    findings {
      ok
      text
      measured
      limit
      mark
      source
      caution
    }
  }
}
    `,
  { fragmentName: 'HeatingSetFields' },
) as unknown as TypedDocumentString<HeatingSetFieldsFragment, unknown>;
export const PhotoFieldsFragmentDoc = new TypedDocumentString(
  `
    fragment PhotoFields on Photo {
  id
  caption
  takenAt
  smallPath
  path
  width
  height
  takenBy {
    id
    name
  }
}
    `,
  { fragmentName: 'PhotoFields' },
) as unknown as TypedDocumentString<PhotoFieldsFragment, unknown>;
export const CostPartsFragmentDoc = new TypedDocumentString(
  `
    fragment CostParts on PlanCost {
  latenessHours
  finishHours
  disturbanceHours
  crewMoves
  unplanned
}
    `,
  { fragmentName: 'CostParts' },
) as unknown as TypedDocumentString<CostPartsFragment, unknown>;
export const OfferedPlanFragmentDoc = new TypedDocumentString(
  `
    fragment OfferedPlan on Proposal {
  state
  jobEnds {
    before
    after
    job {
      id
      number
      name
    }
  }
  moves {
    startBefore
    startAfter
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
    reason {
      text
    }
  }
}
    `,
  { fragmentName: 'OfferedPlan' },
) as unknown as TypedDocumentString<OfferedPlanFragment, unknown>;
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
export const SheetHeadFieldsFragmentDoc = new TypedDocumentString(
  `
    fragment SheetHeadFields on SheetHead {
  recipient
  companyName
  askName
  askEmail
  jobName
  jobState
  address
  town
  zone
  expiresAt
  now
}
    `,
  { fragmentName: 'SheetHeadFields' },
) as unknown as TypedDocumentString<SheetHeadFieldsFragment, unknown>;
export const LinkPhotoFieldsFragmentDoc = new TypedDocumentString(
  `
    fragment LinkPhotoFields on LinkPhoto {
  id
  caption
  takenAt
  path
  smallPath
  width
  height
}
    `,
  { fragmentName: 'LinkPhotoFields' },
) as unknown as TypedDocumentString<LinkPhotoFieldsFragment, unknown>;
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
    from
    to
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
  weatherLimitKey
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
    reason {
      text
    }
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
    query BoardWeather($from: DateTime!, $to: DateTime!, $since: DateTime!, $ahead: Boolean!, $jobIds: [ID!]!, $limitKeys: [String!]!) {
  board(from: $from, to: $to, jobIds: $jobIds) {
    from
    to
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
            windMph
            gustMph
            rainChance
            rainInches
          }
        }
        weatherWindows(from: $since, to: $to, limitKeys: $limitKeys) @include(if: $ahead) {
          ...WindowFields
        }
      }
    }
  }
}
    fragment WindowFields on WeatherWindows {
  limitKey
  name
  protection
  issuedAt
  unknownAfter
  closed {
    from
    to
    causes {
      limitId
      text
      hour
      mark
      source
    }
  }
  requirements {
    requirementId
    from
    to
    text
    known
    mark
    source
    cause {
      text
      hour
    }
  }
  unknown {
    from
    to
  }
}`) as unknown as TypedDocumentString<BoardWeatherQuery, BoardWeatherQueryVariables>;
export const PhaseWeatherDocument = new TypedDocumentString(`
    query PhaseWeather($phaseId: ID!, $from: DateTime!, $to: DateTime!) {
  phase(id: $phaseId) {
    id
    weatherWindows(from: $from, to: $to) {
      ...WindowFields
    }
  }
}
    fragment WindowFields on WeatherWindows {
  limitKey
  name
  protection
  issuedAt
  unknownAfter
  closed {
    from
    to
    causes {
      limitId
      text
      hour
      mark
      source
    }
  }
  requirements {
    requirementId
    from
    to
    text
    known
    mark
    source
    cause {
      text
      hour
    }
  }
  unknown {
    from
    to
  }
}`) as unknown as TypedDocumentString<PhaseWeatherQuery, PhaseWeatherQueryVariables>;
export const ReasonsDocument = new TypedDocumentString(`
    query Reasons($phaseId: ID!) {
  explain(phaseId: $phaseId) {
    kind
    text
    alongside {
      text
    }
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
    improvementId
  }
}
    `) as unknown as TypedDocumentString<ChangedSubscription, ChangedSubscriptionVariables>;
export const MarkPhaseDocument = new TypedDocumentString(`
    mutation MarkPhase($input: MarkPhaseInput!) {
  outcome: markPhase(input: $input) {
    __typename
    ...RefusalFields
    ...ConflictFields
    ... on PhaseSettled {
      answer
    }
  }
}
    fragment RefusalFields on Refusal {
  code
  message
}
fragment ConflictFields on FieldConflict {
  field
  theirs
  mine
  standing
  changedBy
  currentRevision
}`) as unknown as TypedDocumentString<MarkPhaseMutation, MarkPhaseMutationVariables>;
export const NotePhaseDocument = new TypedDocumentString(`
    mutation NotePhase($input: NotePhaseInput!) {
  outcome: notePhase(input: $input) {
    __typename
    ...RefusalFields
    ...ConflictFields
    ... on PhaseSettled {
      answer
    }
  }
}
    fragment RefusalFields on Refusal {
  code
  message
}
fragment ConflictFields on FieldConflict {
  field
  theirs
  mine
  standing
  changedBy
  currentRevision
}`) as unknown as TypedDocumentString<NotePhaseMutation, NotePhaseMutationVariables>;
export const TellRemainingDocument = new TypedDocumentString(`
    mutation TellRemaining($input: TellRemainingInput!) {
  outcome: tellRemaining(input: $input) {
    __typename
    ...RefusalFields
    ...ConflictFields
    ... on PhaseSettled {
      answer
    }
  }
}
    fragment RefusalFields on Refusal {
  code
  message
}
fragment ConflictFields on FieldConflict {
  field
  theirs
  mine
  standing
  changedBy
  currentRevision
}`) as unknown as TypedDocumentString<TellRemainingMutation, TellRemainingMutationVariables>;
export const DecideHoldPointDocument = new TypedDocumentString(`
    mutation DecideHoldPoint($input: DecideHoldPointInput!) {
  outcome: decideHoldPoint(input: $input) {
    __typename
    ...RefusalFields
    ...ConflictFields
    ... on HoldPointSettled {
      answer
    }
    ... on LimitExceeded {
      findings {
        ...FindingFields
      }
    }
    ... on CureNotReached {
      finding {
        ...FindingFields
      }
    }
  }
}
    fragment FindingFields on Finding {
  ok
  text
  measured
  limit
  mark
  source
  caution
}
fragment RefusalFields on Refusal {
  code
  message
}
fragment ConflictFields on FieldConflict {
  field
  theirs
  mine
  standing
  changedBy
  currentRevision
}`) as unknown as TypedDocumentString<DecideHoldPointMutation, DecideHoldPointMutationVariables>;
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
        ...FindingFields
      }
    }
    ... on CureNotReached {
      finding {
        ...FindingFields
      }
    }
  }
}
    fragment FindingFields on Finding {
  ok
  text
  measured
  limit
  mark
  source
  caution
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
          ...FindingFields
        }
      }
    }
  }
}
    fragment FindingFields on Finding {
  ok
  text
  measured
  limit
  mark
  source
  caution
}
fragment RefusalFields on Refusal {
  code
  message
}`) as unknown as TypedDocumentString<RecordCableReadingMutation, RecordCableReadingMutationVariables>;
export const RecordTemperatureDocument = new TypedDocumentString(`
    mutation RecordTemperature($input: RecordTemperatureInput!) {
  outcome: recordTemperature(input: $input) {
    __typename
    ...RefusalFields
  }
}
    fragment RefusalFields on Refusal {
  code
  message
}`) as unknown as TypedDocumentString<RecordTemperatureMutation, RecordTemperatureMutationVariables>;
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
    ... on LimitExceeded {
      findings {
        ...FindingFields
      }
    }
    ... on DesignBroken {
      findings {
        ...FindingFields
      }
    }
  }
}
    fragment FindingFields on Finding {
  ok
  text
  measured
  limit
  mark
  source
  caution
}
fragment RefusalFields on Refusal {
  code
  message
}`) as unknown as TypedDocumentString<RecordHookupMutation, RecordHookupMutationVariables>;
export const StartImprovementDocument = new TypedDocumentString(`
    mutation StartImprovement($input: StartImprovementInput!) {
  outcome: startImprovement(input: $input) {
    __typename
    ...RefusalFields
  }
}
    fragment RefusalFields on Refusal {
  code
  message
}`) as unknown as TypedDocumentString<StartImprovementMutation, StartImprovementMutationVariables>;
export const StopImprovementDocument = new TypedDocumentString(`
    mutation StopImprovement($input: StopImprovementInput!) {
  outcome: stopImprovement(input: $input) {
    __typename
    ...RefusalFields
  }
}
    fragment RefusalFields on Refusal {
  code
  message
}`) as unknown as TypedDocumentString<StopImprovementMutation, StopImprovementMutationVariables>;
export const ProposeMoveDocument = new TypedDocumentString(`
    mutation ProposeMove($input: ProposeMoveInput!) {
  outcome: proposeMove(input: $input) {
    __typename
    ...RefusalFields
  }
}
    fragment RefusalFields on Refusal {
  code
  message
}`) as unknown as TypedDocumentString<ProposeMoveMutation, ProposeMoveMutationVariables>;
export const UndoProposalDocument = new TypedDocumentString(`
    mutation UndoProposal($input: UndoProposalInput!) {
  outcome: undoProposal(input: $input) {
    __typename
    ...RefusalFields
  }
}
    fragment RefusalFields on Refusal {
  code
  message
}`) as unknown as TypedDocumentString<UndoProposalMutation, UndoProposalMutationVariables>;
export const ReleasePhotoDocument = new TypedDocumentString(`
    mutation ReleasePhoto($input: ReleasePhotoInput!) {
  outcome: releasePhoto(input: $input) {
    __typename
    ...RefusalFields
  }
}
    fragment RefusalFields on Refusal {
  code
  message
}`) as unknown as TypedDocumentString<ReleasePhotoMutation, ReleasePhotoMutationVariables>;
export const TakeBackPhotoDocument = new TypedDocumentString(`
    mutation TakeBackPhoto($input: TakeBackPhotoInput!) {
  outcome: takeBackPhoto(input: $input) {
    __typename
    ...RefusalFields
  }
}
    fragment RefusalFields on Refusal {
  code
  message
}`) as unknown as TypedDocumentString<TakeBackPhotoMutation, TakeBackPhotoMutationVariables>;
export const PlacementCureDocument = new TypedDocumentString(`
    query PlacementCure($id: ID!, $from: DateTime!, $to: DateTime!) {
  board(from: $from, to: $to) {
    now
  }
  placement(id: $id) {
    id
    revision
    material
    placedAt
    protectionOffAt
    protectionOffReason
    protectionPlan {
      text
      kinds
      blanketLayers
      blanketR
      enclosureF
      heatHours
    }
    cautions
    protectionOff {
      ...FindingFields
    }
    alarms {
      ...AlarmFields
    }
    outlook {
      ...OutlookFields
    }
  }
}
    fragment FindingFields on Finding {
  ok
  text
  measured
  limit
  mark
  source
  caution
}
fragment OutlookFields on CureOutlook {
  requiredPsi
  hoursToFirstFreeze
  method
  assumption
  mark
  source
  caution
  airKnownUntil
  release {
    at
    basis
    coldestF
    psi
  }
  firstFreeze {
    at
    basis
    coldestF
    psi
  }
  lowest {
    at
    basis
    coldestF
    psi
  }
  freezes {
    at
    basis
    coldestF
    psi
  }
  points {
    at
    basis
    temperatureF
    coldestF
    airF
    psi
  }
}
fragment AlarmFields on CureAlarm {
  id
  kind
  openedAt
  finding {
    text
    measured
    limit
    mark
    source
    caution
  }
}`) as unknown as TypedDocumentString<PlacementCureQuery, PlacementCureQueryVariables>;
export const ProtectOrWaitDocument = new TypedDocumentString(`
    query ProtectOrWait($input: ProtectOrWaitInput!) {
  protectOrWait(input: $input) {
    cold
    coldRule
    protect {
      ...BranchFields
    }
    wait {
      ...BranchFields
    }
    bare {
      ...OutlookFields
    }
    jobs {
      protectFinish
      waitFinish
      waitLaterMinutes
      job {
        id
        number
        name
      }
    }
    phase {
      id
      protectionChoice {
        id
        branch
        chosenAt
        reason
        by {
          id
          name
        }
      }
    }
  }
}
    fragment OutlookFields on CureOutlook {
  requiredPsi
  hoursToFirstFreeze
  method
  assumption
  mark
  source
  caution
  airKnownUntil
  release {
    at
    basis
    coldestF
    psi
  }
  firstFreeze {
    at
    basis
    coldestF
    psi
  }
  lowest {
    at
    basis
    coldestF
    psi
  }
  freezes {
    at
    basis
    coldestF
    psi
  }
  points {
    at
    basis
    temperatureF
    coldestF
    airF
    psi
  }
}
fragment BranchFields on BranchOutlook {
  branch
  placedAt
  curedAt
  jobFinish
  allFinish
  equipmentDays
  heatingHours
  weatherUnknown
  conflicts
  cautions
  protection {
    text
  }
  placing {
    ok
    text
    measured
    limit
    mark
    source
    caution
  }
  outlook {
    requiredPsi
    hoursToFirstFreeze
    method
    assumption
    mark
    source
    caution
    airKnownUntil
    release {
      at
      basis
      coldestF
      psi
    }
    firstFreeze {
      at
      basis
      coldestF
      psi
    }
    lowest {
      at
      basis
      coldestF
      psi
    }
    freezes {
      at
      basis
      coldestF
      psi
    }
    points {
      at
      basis
      temperatureF
      coldestF
      airF
      psi
    }
  }
}`) as unknown as TypedDocumentString<ProtectOrWaitQuery, ProtectOrWaitQueryVariables>;
export const RecordPlacementDocument = new TypedDocumentString(`
    mutation RecordPlacement($input: RecordPlacementInput!) {
  outcome: recordPlacement(input: $input) {
    __typename
    ...RefusalFields
  }
}
    fragment RefusalFields on Refusal {
  code
  message
}`) as unknown as TypedDocumentString<RecordPlacementMutation, RecordPlacementMutationVariables>;
export const ChangeProtectionDocument = new TypedDocumentString(`
    mutation ChangeProtection($input: ChangeProtectionInput!) {
  outcome: changeProtection(input: $input) {
    __typename
    ...RefusalFields
  }
}
    fragment RefusalFields on Refusal {
  code
  message
}`) as unknown as TypedDocumentString<ChangeProtectionMutation, ChangeProtectionMutationVariables>;
export const TakeProtectionOffDocument = new TypedDocumentString(`
    mutation TakeProtectionOff($input: TakeProtectionOffInput!) {
  outcome: takeProtectionOff(input: $input) {
    __typename
    ...RefusalFields
    ... on ProtectionMustStay {
      finding {
        ...FindingFields
      }
    }
  }
}
    fragment FindingFields on Finding {
  ok
  text
  measured
  limit
  mark
  source
  caution
}
fragment RefusalFields on Refusal {
  code
  message
}`) as unknown as TypedDocumentString<TakeProtectionOffMutation, TakeProtectionOffMutationVariables>;
export const ChooseProtectionDocument = new TypedDocumentString(`
    mutation ChooseProtection($input: ChooseProtectionInput!) {
  outcome: chooseProtection(input: $input) {
    __typename
    ...RefusalFields
  }
}
    fragment RefusalFields on Refusal {
  code
  message
}`) as unknown as TypedDocumentString<ChooseProtectionMutation, ChooseProtectionMutationVariables>;
export const RevokeLoggerDocument = new TypedDocumentString(`
    mutation RevokeLogger($input: RevokeLoggerInput!) {
  outcome: revokeLogger(input: $input) {
    __typename
    ...RefusalFields
  }
}
    fragment RefusalFields on Refusal {
  code
  message
}`) as unknown as TypedDocumentString<RevokeLoggerMutation, RevokeLoggerMutationVariables>;
export const RegisterLoggerDocument = new TypedDocumentString(`
    mutation RegisterLogger($input: RegisterLoggerInput!) {
  outcome: registerLogger(input: $input) {
    __typename
    ...RefusalFields
    ... on LoggerRegistered {
      token
      path
      logger {
        id
        name
      }
    }
  }
}
    fragment RefusalFields on Refusal {
  code
  message
}`) as unknown as TypedDocumentString<RegisterLoggerMutation, RegisterLoggerMutationVariables>;
export const EnteringDocument = new TypedDocumentString(`
    query Entering {
  crews {
    id
    name
    trades
    size
    active
  }
  equipmentPools {
    id
    kind
    name
    quantity
    unit
  }
  authorities {
    id
    name
    noticeHours
    visitMinutes
    phone
  }
  sites(first: 200) {
    edges {
      node {
        id
        address
        town
        frostDepthInches
        frostSource
        authority {
          id
          name
        }
      }
    }
  }
  jobs(state: entered, first: 200) {
    edges {
      node {
        id
        number
        name
        plannedFinish
        committedFinish
      }
    }
  }
}
    `) as unknown as TypedDocumentString<EnteringQuery, EnteringQueryVariables>;
export const CreateCrewDocument = new TypedDocumentString(`
    mutation CreateCrew($input: CreateCrewInput!) {
  outcome: createCrew(input: $input) {
    __typename
    ...RefusalFields
    ...FaultFields
  }
}
    fragment RefusalFields on Refusal {
  code
  message
}
fragment FaultFields on InvalidInput {
  faults {
    path
    message
  }
}`) as unknown as TypedDocumentString<CreateCrewMutation, CreateCrewMutationVariables>;
export const SetEquipmentDocument = new TypedDocumentString(`
    mutation SetEquipment($input: SetEquipmentInput!) {
  outcome: setEquipment(input: $input) {
    __typename
    ...RefusalFields
    ...FaultFields
  }
}
    fragment RefusalFields on Refusal {
  code
  message
}
fragment FaultFields on InvalidInput {
  faults {
    path
    message
  }
}`) as unknown as TypedDocumentString<SetEquipmentMutation, SetEquipmentMutationVariables>;
export const CreateAuthorityDocument = new TypedDocumentString(`
    mutation CreateAuthority($input: CreateAuthorityInput!) {
  outcome: createAuthority(input: $input) {
    __typename
    ...RefusalFields
    ...FaultFields
  }
}
    fragment RefusalFields on Refusal {
  code
  message
}
fragment FaultFields on InvalidInput {
  faults {
    path
    message
  }
}`) as unknown as TypedDocumentString<CreateAuthorityMutation, CreateAuthorityMutationVariables>;
export const CreateSiteDocument = new TypedDocumentString(`
    mutation CreateSite($input: CreateSiteInput!) {
  outcome: createSite(input: $input) {
    __typename
    ...RefusalFields
    ...FaultFields
    ... on SiteChanged {
      site {
        id
      }
    }
  }
}
    fragment RefusalFields on Refusal {
  code
  message
}
fragment FaultFields on InvalidInput {
  faults {
    path
    message
  }
}`) as unknown as TypedDocumentString<CreateSiteMutation, CreateSiteMutationVariables>;
export const CreateJobDocument = new TypedDocumentString(`
    mutation CreateJob($input: CreateJobInput!) {
  outcome: createJob(input: $input) {
    __typename
    ...RefusalFields
    ...FaultFields
    ... on JobChanged {
      job {
        id
        number
      }
    }
  }
}
    fragment RefusalFields on Refusal {
  code
  message
}
fragment FaultFields on InvalidInput {
  faults {
    path
    message
  }
}`) as unknown as TypedDocumentString<CreateJobMutation, CreateJobMutationVariables>;
export const EntryDesignDocument = new TypedDocumentString(`
    query EntryDesign($number: Int!) {
  jobByNumber(number: $number) {
    id
    number
    name
    ownerName
    site {
      id
      address
      town
    }
    findings {
      ...DesignFindingFields
    }
    design {
      heat {
        areaKey
        areaName
        sensible
        melting
        convectionAndRadiation
        evaporation
        back
        edge
        total
        given
        warmUpHours
        sources
      }
      cables {
        setKey
        setName
        asMeasured
        feet
        closest
        tightestBend
        coldLeadOutside
        fields {
          key
          feet
          meanSpacing
          wattsPerSquareFoot
          widestGap
        }
      }
      circuits {
        zone
        sets
        watts
        load
        designLoad
        breaker
        conductorAwg
        terminals
        source
        caution
      }
      risers {
        count
        steps {
          riser
          finished
          blockTop
          courses
        }
        advice
      }
      footing {
        width
        thickness
        bottom
        frostDepth
        frostSource
        concrete
        checklist {
          key
          text
          source
        }
      }
      drawings {
        key
        title
        scale
        width
        height
        svg
      }
    }
  }
}
    fragment FindingFields on Finding {
  ok
  text
  measured
  limit
  mark
  source
  caution
}
fragment DesignFindingFields on Finding {
  rule
  ...FindingFields
  blocks
  waived
  waivedAt
  waivedBy {
    id
    name
  }
}`) as unknown as TypedDocumentString<EntryDesignQuery, EntryDesignQueryVariables>;
export const HookupPageDocument = new TypedDocumentString(`
    query HookupPage($id: ID!) {
  hookup(id: $id) {
    id
    state
    coldLeadThrough
    coldLeadFreeInches
    sensorThrough
    leadsLabelled
    leadsPass
    readyAt
    bookedFor
    bookedBy
    doneAt
    doneBy
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
    heatingSet {
      ...HeatingSetFields
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
    warnings
    area {
      id
      name
    }
    findings {
      ok
      text
      measured
      limit
      mark
      source
      caution
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
export const JobDesignDocument = new TypedDocumentString(`
    query JobDesign($number: Int!) {
  jobByNumber(number: $number) {
    id
    revision
    measurement
    findings {
      ...DesignFindingFields
    }
    buyList {
      key
      label
      measured
      needed
      unit
      waste
      pieces
      soldAs
      mark
    }
  }
}
    fragment FindingFields on Finding {
  ok
  text
  measured
  limit
  mark
  source
  caution
}
fragment DesignFindingFields on Finding {
  rule
  ...FindingFields
  blocks
  waived
  waivedAt
  waivedBy {
    id
    name
  }
}`) as unknown as TypedDocumentString<JobDesignQuery, JobDesignQueryVariables>;
export const WaiveFindingDocument = new TypedDocumentString(`
    mutation WaiveFinding($input: WaiveFindingInput!) {
  outcome: waiveFinding(input: $input) {
    __typename
    ...RefusalFields
  }
}
    fragment RefusalFields on Refusal {
  code
  message
}`) as unknown as TypedDocumentString<WaiveFindingMutation, WaiveFindingMutationVariables>;
export const CorrectMeasurementDocument = new TypedDocumentString(`
    mutation CorrectMeasurement($input: CorrectMeasurementInput!) {
  outcome: correctMeasurement(input: $input) {
    __typename
    ...RefusalFields
  }
}
    fragment RefusalFields on Refusal {
  code
  message
}`) as unknown as TypedDocumentString<CorrectMeasurementMutation, CorrectMeasurementMutationVariables>;
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
      loggers {
        id
        name
        lastPostAt
        revokedAt
        revision
        placement {
          id
        }
      }
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
        ...FindingFields
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
}
fragment FindingFields on Finding {
  ok
  text
  measured
  limit
  mark
  source
  caution
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
        logger {
          id
          name
        }
      }
      strength {
        psi
        requiredPsi
        basis
        method
        mark
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
    warnings
    area {
      id
      name
    }
    findings {
      ok
      text
      measured
      limit
      mark
      source
      caution
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
        byLink
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
export const JobPhotosDocument = new TypedDocumentString(`
    query JobPhotos($number: Int!) {
  jobByNumber(number: $number) {
    id
    photos {
      ...PhotoFields
      releasedAt
      revision
      phase {
        id
        name
        area {
          id
          name
        }
      }
    }
  }
}
    fragment PhotoFields on Photo {
  id
  caption
  takenAt
  smallPath
  path
  width
  height
  takenBy {
    id
    name
  }
}`) as unknown as TypedDocumentString<JobPhotosQuery, JobPhotosQueryVariables>;
export const NewestImprovementDocument = new TypedDocumentString(`
    query NewestImprovement {
  newestImprovement {
    id
    state
    seconds
    schedules
    stopping
    message
    progress {
      seconds
      withinPercent
    }
    outcome {
      withinPercent
      proved
      factsMoved
      before {
        ...CostParts
      }
      after {
        ...CostParts
      }
    }
    proposal {
      ...BoardProposal
      ...OfferedPlan
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
    reason {
      text
    }
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
fragment CostParts on PlanCost {
  latenessHours
  finishHours
  disturbanceHours
  crewMoves
  unplanned
}
fragment OfferedPlan on Proposal {
  state
  jobEnds {
    before
    after
    job {
      id
      number
      name
    }
  }
  moves {
    startBefore
    startAfter
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
    reason {
      text
    }
  }
}`) as unknown as TypedDocumentString<NewestImprovementQuery, NewestImprovementQueryVariables>;
export const NewestMoveDocument = new TypedDocumentString(`
    query NewestMove {
  newestMove {
    id
    state
    way
    startAt
    message
    phase {
      id
      name
      job {
        id
        number
      }
    }
    crew {
      id
      name
    }
    proposal {
      ...BoardProposal
      ...OfferedPlan
      undoable
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
    reason {
      text
    }
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
fragment OfferedPlan on Proposal {
  state
  jobEnds {
    before
    after
    job {
      id
      number
      name
    }
  }
  moves {
    startBefore
    startAfter
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
    reason {
      text
    }
  }
}`) as unknown as TypedDocumentString<NewestMoveQuery, NewestMoveQueryVariables>;
export const PlanInputDocument = new TypedDocumentString(`
    query PlanInput {
  planInput {
    planNumber
    startsAt
    slotMinutes
    json
  }
}
    `) as unknown as TypedDocumentString<PlanInputQuery, PlanInputQueryVariables>;
export const PlanRiskDocument = new TypedDocumentString(`
    query PlanRisk {
  planRisk(samples: 200) {
    samples
    assumptions
    jobs {
      planned
      half {
        at
        low
        high
      }
      fourFifths {
        at
        low
        high
      }
      fan {
        share
        at
      }
      dueKept {
        chance
        low
        high
      }
      causes {
        source
        share
      }
      job {
        id
        number
        name
        dueAt
      }
    }
  }
}
    `) as unknown as TypedDocumentString<PlanRiskQuery, PlanRiskQueryVariables>;
export const WithoutProtectionDocument = new TypedDocumentString(`
    query WithoutProtection($phaseId: ID!) {
  whatIf(input: {withoutProtection: {phaseId: $phaseId}}) {
    __typename
    ... on Refusal {
      code
      message
    }
    ... on Supposed {
      jobs {
        before
        after
        laterMinutes
        dueMissedBefore
        dueMissedAfter
        job {
          id
          number
          name
        }
      }
      phases {
        startAfter
      }
      conflictsAdded {
        text
      }
      conflictsRemoved {
        text
      }
    }
  }
}
    `) as unknown as TypedDocumentString<WithoutProtectionQuery, WithoutProtectionQueryVariables>;
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
export const HookupSheetDocument = new TypedDocumentString(`
    query HookupSheet {
  hookupSheet {
    head {
      ...SheetHeadFields
      jobNumber
    }
    photos {
      ...LinkPhotoFields
    }
    hookups {
      id
      state
      coldLeadThrough
      coldLeadFreeInches
      sensorThrough
      leadsLabelled
      leadsPass
      readyAt
      bookedFor
      bookedBy
      doneAt
      doneBy
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
      heatingSet {
        ...HeatingSetFields
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
    warnings
    area {
      id
      name
    }
    findings {
      ok
      text
      measured
      limit
      mark
      source
      caution
    }
  }
}
fragment SheetHeadFields on SheetHead {
  recipient
  companyName
  askName
  askEmail
  jobName
  jobState
  address
  town
  zone
  expiresAt
  now
}
fragment LinkPhotoFields on LinkPhoto {
  id
  caption
  takenAt
  path
  smallPath
  width
  height
}`) as unknown as TypedDocumentString<HookupSheetQuery, HookupSheetQueryVariables>;
export const OwnerWeekDocument = new TypedDocumentString(`
    query OwnerWeek {
  ownerWeek {
    head {
      ...SheetHeadFields
    }
    summary
    days {
      date
      lines
      keepClear
      weather
    }
    photos {
      ...LinkPhotoFields
    }
    walk
    heat
    heatCaution
  }
}
    fragment SheetHeadFields on SheetHead {
  recipient
  companyName
  askName
  askEmail
  jobName
  jobState
  address
  town
  zone
  expiresAt
  now
}
fragment LinkPhotoFields on LinkPhoto {
  id
  caption
  takenAt
  path
  smallPath
  width
  height
}`) as unknown as TypedDocumentString<OwnerWeekQuery, OwnerWeekQueryVariables>;
export const JobLinksDocument = new TypedDocumentString(`
    query JobLinks($number: Int!) {
  jobByNumber(number: $number) {
    id
    ownerName
    signedLinks {
      id
      purpose
      recipient
      state
      createdAt
      expiresAt
      revokedAt
      browsers
      lastOpenedAt
      madeBy
      refusedOpenings
      revision
    }
  }
}
    `) as unknown as TypedDocumentString<JobLinksQuery, JobLinksQueryVariables>;
export const MakeSignedLinkDocument = new TypedDocumentString(`
    mutation MakeSignedLink($input: MakeSignedLinkInput!) {
  outcome: makeSignedLink(input: $input) {
    __typename
    ...RefusalFields
    ... on SignedLinkMade {
      address
      signedLink {
        id
      }
    }
  }
}
    fragment RefusalFields on Refusal {
  code
  message
}`) as unknown as TypedDocumentString<MakeSignedLinkMutation, MakeSignedLinkMutationVariables>;
export const RevokeSignedLinkDocument = new TypedDocumentString(`
    mutation RevokeSignedLink($input: RevokeSignedLinkInput!) {
  outcome: revokeSignedLink(input: $input) {
    __typename
    ...RefusalFields
  }
}
    fragment RefusalFields on Refusal {
  code
  message
}`) as unknown as TypedDocumentString<RevokeSignedLinkMutation, RevokeSignedLinkMutationVariables>;
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
    remainingMinutes
    note
    revision
    job {
      id
      number
      name
      placements {
        id
        placedAt
        phase {
          id
          name
        }
        alarms {
          ...AlarmFields
        }
        strength {
          psi
          requiredPsi
          basis
          method
          mark
          caution
        }
      }
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
    weatherWindows {
      ...WindowFields
    }
    holdPoints {
      ...SiteHoldPoint
    }
    photos {
      ...PhotoFields
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
    fragment WindowFields on WeatherWindows {
  limitKey
  name
  protection
  issuedAt
  unknownAfter
  closed {
    from
    to
    causes {
      limitId
      text
      hour
      mark
      source
    }
  }
  requirements {
    requirementId
    from
    to
    text
    known
    mark
    source
    cause {
      text
      hour
    }
  }
  unknown {
    from
    to
  }
}
fragment AlarmFields on CureAlarm {
  id
  kind
  openedAt
  finding {
    text
    measured
    limit
    mark
    source
    caution
  }
}
fragment PhotoFields on Photo {
  id
  caption
  takenAt
  smallPath
  path
  width
  height
  takenBy {
    id
    name
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
