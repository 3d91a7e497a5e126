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

export type RecordFindingFragment = {
  readonly ok: boolean;
  readonly text: string;
  readonly measured: string;
  readonly limit: string;
  readonly mark: string;
  readonly source: string;
  readonly caution: string | null;
  readonly waived: string | null;
};

export type RecordQueryVariables = Exact<{
  number: Scalars['Int']['input'];
}>;

export type RecordQuery = {
  readonly company: { readonly name: string; readonly zone: string };
  readonly jobByNumber: {
    readonly id: string;
    readonly number: number;
    readonly name: string;
    readonly ownerName: string;
    readonly state: JobState;
    readonly site: {
      readonly address: string;
      readonly town: string;
      readonly frostDepthInches: number;
      readonly frostSource: string;
      readonly authority: { readonly name: string } | null;
    };
    readonly areas: ReadonlyArray<{
      readonly name: string;
      readonly kind: AreaKind;
      readonly heated: boolean;
    }>;
    readonly quantities: ReadonlyArray<{
      readonly label: string;
      readonly value: number;
      readonly unit: string;
    }>;
    readonly findings: ReadonlyArray<{
      readonly ok: boolean;
      readonly text: string;
      readonly measured: string;
      readonly limit: string;
      readonly mark: string;
      readonly source: string;
      readonly caution: string | null;
      readonly waived: string | null;
    }>;
    readonly design: {
      readonly drawings: ReadonlyArray<{
        readonly key: string;
        readonly title: string;
        readonly scale: number;
        readonly width: number;
        readonly height: number;
        readonly svg: string;
      }>;
    } | null;
    readonly phases: ReadonlyArray<{
      readonly id: string;
      readonly name: string;
      readonly state: PhaseState;
      readonly actualStart: string | null;
      readonly actualFinish: string | null;
      readonly note: string | null;
      readonly actualCrew: { readonly name: string } | null;
      readonly area: { readonly name: string } | null;
    }>;
    readonly holdPoints: ReadonlyArray<{
      readonly key: string;
      readonly title: string;
      readonly kind: HoldPointKind;
      readonly gate: Gate;
      readonly state: HoldPointState;
      readonly reason: string | null;
      readonly caution: string | null;
      readonly decidedAt: string | null;
      readonly decidedBy: { readonly name: string } | null;
      readonly phase: { readonly name: string };
      readonly items: ReadonlyArray<{
        readonly id: string;
        readonly label: string;
        readonly unit: string | null;
        readonly limitText: string;
      }>;
      readonly measured: ReadonlyArray<{ readonly itemId: string; readonly text: string }>;
      readonly findings: ReadonlyArray<{
        readonly ok: boolean;
        readonly text: string;
        readonly measured: string;
        readonly limit: string;
        readonly mark: string;
        readonly source: string;
        readonly caution: string | null;
        readonly waived: string | null;
      }>;
    }>;
    readonly inspections: ReadonlyArray<{
      readonly title: string;
      readonly attempt: number;
      readonly state: InspectionState;
      readonly visitFrom: string | null;
      readonly resultAt: string | null;
      readonly inspector: string | null;
      readonly note: string | null;
    }>;
    readonly clearances: ReadonlyArray<{
      readonly title: string;
      readonly state: ClearanceState;
      readonly clearedAt: string | null;
      readonly reference: string | null;
    }>;
    readonly heatingSets: ReadonlyArray<{
      readonly name: string;
      readonly watts: number;
      readonly volts: number;
      readonly ohms: number;
      readonly labelTempF: number;
      readonly heatedFeet: number;
      readonly coldLeadFeet: number;
      readonly cureDays: number;
      readonly receivedAt: string | null;
      readonly cautions: ReadonlyArray<string>;
      readonly areas: ReadonlyArray<{ readonly name: string }>;
      readonly readings: ReadonlyArray<{
        readonly stage: ReadingStage;
        readonly at: string;
        readonly ohms: number;
        readonly megaohms: number;
        readonly testVolts: number;
        readonly cableTempF: number;
        readonly accepted: boolean;
        readonly warnings: ReadonlyArray<string>;
        readonly area: { readonly name: string } | null;
        readonly by: { readonly name: string } | null;
        readonly findings: ReadonlyArray<{
          readonly ok: boolean;
          readonly text: string;
          readonly measured: string;
          readonly limit: string;
          readonly mark: string;
          readonly source: string;
          readonly caution: string | null;
          readonly waived: string | null;
        }>;
      }>;
    }>;
    readonly hookups: ReadonlyArray<{
      readonly id: string;
      readonly state: HookupState;
      readonly doneAt: string | null;
      readonly energiseAllowedAt: string | null;
      readonly energisedAt: string | null;
      readonly cautions: ReadonlyArray<string>;
      readonly coldLeadFreeInches: number | null;
      readonly electrician: { readonly name: string } | null;
      readonly heatingSet: { readonly name: string };
      readonly circuit: { readonly text: string; readonly source: string };
    }>;
    readonly placements: ReadonlyArray<{
      readonly id: string;
      readonly placedAt: string;
      readonly material: string;
      readonly placedTempF: number;
      readonly protection: ReadonlyArray<string>;
      readonly cautions: ReadonlyArray<string>;
      readonly phase: { readonly name: string };
      readonly readings: ReadonlyArray<{
        readonly at: string;
        readonly concreteF: number;
        readonly airF: number | null;
        readonly by: { readonly name: string } | null;
        readonly logger: { readonly name: string } | null;
      }>;
    }>;
    readonly photos: ReadonlyArray<{
      readonly id: string;
      readonly caption: string | null;
      readonly takenAt: string;
      readonly releasedAt: string | null;
      readonly width: number;
      readonly height: number;
      readonly takenBy: { readonly name: string } | null;
      readonly phase: { readonly name: string } | null;
    }>;
  } | null;
};

export type RecordJournalQueryVariables = Exact<{
  jobId: Scalars['ID']['input'];
  after: InputMaybe<Scalars['String']['input']>;
}>;

export type RecordJournalQuery = {
  readonly journal: {
    readonly edges: ReadonlyArray<{
      readonly node: {
        readonly at: string;
        readonly action: string;
        readonly reason: string | null;
        readonly person: { readonly name: string } | null;
      };
    }>;
    readonly pageInfo: { readonly hasNextPage: boolean; readonly endCursor: string | null };
  };
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
export const RecordFindingFragmentDoc = new TypedDocumentString(
  `
    fragment RecordFinding on Finding {
  ok
  text
  measured
  limit
  mark
  source
  caution
  waived
}
    `,
  { fragmentName: 'RecordFinding' },
) as unknown as TypedDocumentString<RecordFindingFragment, unknown>;
export const RecordDocument = new TypedDocumentString(`
    query Record($number: Int!) {
  company {
    name
    zone
  }
  jobByNumber(number: $number) {
    id
    number
    name
    ownerName
    state
    site {
      address
      town
      frostDepthInches
      frostSource
      authority {
        name
      }
    }
    areas {
      name
      kind
      heated
    }
    quantities {
      label
      value
      unit
    }
    findings {
      ...RecordFinding
    }
    design {
      drawings {
        key
        title
        scale
        width
        height
        svg
      }
    }
    phases {
      id
      name
      state
      actualStart
      actualFinish
      note
      actualCrew {
        name
      }
      area {
        name
      }
    }
    holdPoints {
      key
      title
      kind
      gate
      state
      reason
      caution
      decidedAt
      decidedBy {
        name
      }
      phase {
        name
      }
      items {
        id
        label
        unit
        limitText
      }
      measured {
        itemId
        text
      }
      findings {
        ...RecordFinding
      }
    }
    inspections {
      title
      attempt
      state
      visitFrom
      resultAt
      inspector
      note
    }
    clearances {
      title
      state
      clearedAt
      reference
    }
    heatingSets {
      name
      watts
      volts
      ohms
      labelTempF
      heatedFeet
      coldLeadFeet
      cureDays
      receivedAt
      cautions
      areas {
        name
      }
      readings {
        stage
        at
        ohms
        megaohms
        testVolts
        cableTempF
        accepted
        warnings
        area {
          name
        }
        by {
          name
        }
        findings {
          ...RecordFinding
        }
      }
    }
    hookups {
      id
      state
      doneAt
      energiseAllowedAt
      energisedAt
      cautions
      coldLeadFreeInches
      electrician {
        name
      }
      heatingSet {
        name
      }
      circuit {
        text
        source
      }
    }
    placements {
      id
      placedAt
      material
      placedTempF
      protection
      cautions
      phase {
        name
      }
      readings {
        at
        concreteF
        airF
        by {
          name
        }
        logger {
          name
        }
      }
    }
    photos {
      id
      caption
      takenAt
      releasedAt
      width
      height
      takenBy {
        name
      }
      phase {
        name
      }
    }
  }
}
    fragment RecordFinding on Finding {
  ok
  text
  measured
  limit
  mark
  source
  caution
  waived
}`) as unknown as TypedDocumentString<RecordQuery, RecordQueryVariables>;
export const RecordJournalDocument = new TypedDocumentString(`
    query RecordJournal($jobId: ID!, $after: String) {
  journal(jobId: $jobId, first: 100, after: $after) {
    edges {
      node {
        at
        action
        reason
        person {
          name
        }
      }
    }
    pageInfo {
      hasNextPage
      endCursor
    }
  }
}
    `) as unknown as TypedDocumentString<RecordJournalQuery, RecordJournalQueryVariables>;
