-- CreateSchema
CREATE SCHEMA IF NOT EXISTS "public";

-- CreateEnum
CREATE TYPE "Role" AS ENUM ('office', 'foreman', 'crew', 'electrician', 'viewer');

-- CreateEnum
CREATE TYPE "JobState" AS ENUM ('entered', 'running', 'done', 'cancelled');

-- CreateEnum
CREATE TYPE "AreaKind" AS ENUM ('landing', 'flight', 'walk');

-- CreateEnum
CREATE TYPE "DurationKind" AS ENUM ('work', 'elapsed');

-- CreateEnum
CREATE TYPE "Continuity" AS ENUM ('continuous', 'interruptible');

-- CreateEnum
CREATE TYPE "PhaseState" AS ENUM ('waiting', 'started', 'done', 'dropped');

-- CreateEnum
CREATE TYPE "Origin" AS ENUM ('template', 'custom');

-- CreateEnum
CREATE TYPE "LinkKind" AS ENUM ('finishStart', 'startStart', 'finishFinish', 'startFinish');

-- CreateEnum
CREATE TYPE "LagIn" AS ENUM ('working', 'elapsed');

-- CreateEnum
CREATE TYPE "HoldPointKind" AS ENUM ('check', 'inspection', 'clearance', 'cure', 'reading');

-- CreateEnum
CREATE TYPE "Gate" AS ENUM ('start', 'finish');

-- CreateEnum
CREATE TYPE "HoldPointState" AS ENUM ('open', 'released', 'refused', 'waived');

-- CreateEnum
CREATE TYPE "ClearanceKind" AS ENUM ('permit', 'markOut', 'material');

-- CreateEnum
CREATE TYPE "ClearanceState" AS ENUM ('needed', 'requested', 'cleared');

-- CreateEnum
CREATE TYPE "InspectionState" AS ENUM ('needed', 'requested', 'booked', 'passed', 'failed');

-- CreateEnum
CREATE TYPE "HoldCause" AS ENUM ('called', 'forecast');

-- CreateEnum
CREATE TYPE "ReadingStage" AS ENUM ('received', 'laid', 'covered', 'beforeHookup');

-- CreateEnum
CREATE TYPE "HookupState" AS ENUM ('waiting', 'ready', 'booked', 'done');

-- CreateEnum
CREATE TYPE "CommitmentState" AS ENUM ('held', 'kept', 'released');

-- CreateEnum
CREATE TYPE "ProposalState" AS ENUM ('open', 'accepted', 'dropped', 'superseded');

-- CreateEnum
CREATE TYPE "ReminderState" AS ENUM ('pending', 'sent', 'cancelled', 'tooLate');

-- CreateEnum
CREATE TYPE "DeliveryState" AS ENUM ('claimed', 'sent', 'failed');

-- CreateTable
CREATE TABLE "Company" (
    "id" UUID NOT NULL,
    "name" TEXT NOT NULL,
    "zone" TEXT NOT NULL,
    "freezeDays" INTEGER NOT NULL DEFAULT 3,
    "planNumber" INTEGER NOT NULL DEFAULT 0,
    "jobNumber" INTEGER NOT NULL DEFAULT 100,
    "isDemo" BOOLEAN NOT NULL DEFAULT false,
    "revision" INTEGER NOT NULL DEFAULT 1,
    "createdAt" TIMESTAMPTZ(3) NOT NULL DEFAULT CURRENT_TIMESTAMP,

    CONSTRAINT "Company_pkey" PRIMARY KEY ("id")
);

-- CreateTable
CREATE TABLE "Person" (
    "id" UUID NOT NULL,
    "companyId" UUID NOT NULL,
    "email" TEXT NOT NULL,
    "name" TEXT NOT NULL,
    "role" "Role" NOT NULL,
    "passwordHash" TEXT NOT NULL,
    "zone" TEXT NOT NULL,
    "quietFrom" TEXT,
    "quietTo" TEXT,
    "active" BOOLEAN NOT NULL DEFAULT true,
    "revision" INTEGER NOT NULL DEFAULT 1,
    "createdAt" TIMESTAMPTZ(3) NOT NULL DEFAULT CURRENT_TIMESTAMP,

    CONSTRAINT "Person_pkey" PRIMARY KEY ("id")
);

-- CreateTable
CREATE TABLE "Session" (
    "id" UUID NOT NULL,
    "personId" UUID NOT NULL,
    "tokenHash" TEXT NOT NULL,
    "createdAt" TIMESTAMPTZ(3) NOT NULL DEFAULT CURRENT_TIMESTAMP,
    "expiresAt" TIMESTAMPTZ(3) NOT NULL,
    "revokedAt" TIMESTAMPTZ(3),

    CONSTRAINT "Session_pkey" PRIMARY KEY ("id")
);

-- CreateTable
CREATE TABLE "Crew" (
    "id" UUID NOT NULL,
    "companyId" UUID NOT NULL,
    "name" TEXT NOT NULL,
    "trades" TEXT[],
    "size" INTEGER NOT NULL,
    "zone" TEXT NOT NULL,
    "week" JSONB NOT NULL,
    "active" BOOLEAN NOT NULL DEFAULT true,
    "revision" INTEGER NOT NULL DEFAULT 1,

    CONSTRAINT "Crew_pkey" PRIMARY KEY ("id")
);

-- CreateTable
CREATE TABLE "CrewMember" (
    "companyId" UUID NOT NULL,
    "crewId" UUID NOT NULL,
    "personId" UUID NOT NULL,
    "lead" BOOLEAN NOT NULL DEFAULT false,

    CONSTRAINT "CrewMember_pkey" PRIMARY KEY ("crewId","personId")
);

-- CreateTable
CREATE TABLE "CrewException" (
    "id" UUID NOT NULL,
    "companyId" UUID NOT NULL,
    "crewId" UUID NOT NULL,
    "day" DATE NOT NULL,
    "hours" JSONB NOT NULL,
    "reason" TEXT NOT NULL,

    CONSTRAINT "CrewException_pkey" PRIMARY KEY ("id")
);

-- CreateTable
CREATE TABLE "EquipmentPool" (
    "id" UUID NOT NULL,
    "companyId" UUID NOT NULL,
    "kind" TEXT NOT NULL,
    "name" TEXT NOT NULL,
    "unit" TEXT NOT NULL,
    "quantity" INTEGER NOT NULL,
    "revision" INTEGER NOT NULL DEFAULT 1,

    CONSTRAINT "EquipmentPool_pkey" PRIMARY KEY ("id")
);

-- CreateTable
CREATE TABLE "Authority" (
    "id" UUID NOT NULL,
    "companyId" UUID NOT NULL,
    "name" TEXT NOT NULL,
    "noticeHours" INTEGER NOT NULL,
    "visitMinutes" INTEGER NOT NULL DEFAULT 30,
    "zone" TEXT NOT NULL,
    "week" JSONB NOT NULL,
    "closedDays" JSONB NOT NULL DEFAULT '{}',
    "phone" TEXT,
    "revision" INTEGER NOT NULL DEFAULT 1,

    CONSTRAINT "Authority_pkey" PRIMARY KEY ("id")
);

-- CreateTable
CREATE TABLE "Site" (
    "id" UUID NOT NULL,
    "companyId" UUID NOT NULL,
    "address" TEXT NOT NULL,
    "town" TEXT NOT NULL,
    "zone" TEXT NOT NULL,
    "latitude" DOUBLE PRECISION,
    "longitude" DOUBLE PRECISION,
    "frostDepthInches" DOUBLE PRECISION NOT NULL,
    "frostSource" TEXT NOT NULL,
    "authorityId" UUID,
    "revision" INTEGER NOT NULL DEFAULT 1,

    CONSTRAINT "Site_pkey" PRIMARY KEY ("id")
);

-- CreateTable
CREATE TABLE "Forecast" (
    "id" UUID NOT NULL,
    "companyId" UUID NOT NULL,
    "siteId" UUID NOT NULL,
    "source" TEXT NOT NULL,
    "issuedAt" TIMESTAMPTZ(3) NOT NULL,
    "receivedAt" TIMESTAMPTZ(3) NOT NULL,
    "hours" JSONB NOT NULL,

    CONSTRAINT "Forecast_pkey" PRIMARY KEY ("id")
);

-- CreateTable
CREATE TABLE "WeatherLimitSet" (
    "id" UUID NOT NULL,
    "companyId" UUID NOT NULL,
    "key" TEXT NOT NULL,
    "name" TEXT NOT NULL,
    "limits" JSONB NOT NULL,
    "revision" INTEGER NOT NULL DEFAULT 1,

    CONSTRAINT "WeatherLimitSet_pkey" PRIMARY KEY ("id")
);

-- CreateTable
CREATE TABLE "Template" (
    "id" UUID NOT NULL,
    "companyId" UUID NOT NULL,
    "name" TEXT NOT NULL,
    "body" JSONB NOT NULL,
    "active" BOOLEAN NOT NULL DEFAULT true,
    "revision" INTEGER NOT NULL DEFAULT 1,

    CONSTRAINT "Template_pkey" PRIMARY KEY ("id")
);

-- CreateTable
CREATE TABLE "Job" (
    "id" UUID NOT NULL,
    "companyId" UUID NOT NULL,
    "number" INTEGER NOT NULL,
    "name" TEXT NOT NULL,
    "siteId" UUID NOT NULL,
    "templateId" UUID NOT NULL,
    "ownerName" TEXT NOT NULL,
    "priority" INTEGER NOT NULL DEFAULT 5,
    "dueAt" TIMESTAMPTZ(3),
    "state" "JobState" NOT NULL DEFAULT 'entered',
    "measurement" JSONB NOT NULL,
    "quantities" JSONB NOT NULL,
    "revision" INTEGER NOT NULL DEFAULT 1,
    "createdAt" TIMESTAMPTZ(3) NOT NULL DEFAULT CURRENT_TIMESTAMP,

    CONSTRAINT "Job_pkey" PRIMARY KEY ("id")
);

-- CreateTable
CREATE TABLE "Area" (
    "id" UUID NOT NULL,
    "companyId" UUID NOT NULL,
    "jobId" UUID NOT NULL,
    "key" TEXT NOT NULL,
    "kind" "AreaKind" NOT NULL,
    "name" TEXT NOT NULL,
    "position" INTEGER NOT NULL,
    "heated" BOOLEAN NOT NULL,
    "quantities" JSONB NOT NULL,

    CONSTRAINT "Area_pkey" PRIMARY KEY ("id")
);

-- CreateTable
CREATE TABLE "Phase" (
    "id" UUID NOT NULL,
    "companyId" UUID NOT NULL,
    "jobId" UUID NOT NULL,
    "areaId" UUID,
    "key" TEXT NOT NULL,
    "kind" TEXT NOT NULL,
    "name" TEXT NOT NULL,
    "hatch" TEXT NOT NULL,
    "trade" TEXT,
    "position" INTEGER NOT NULL,
    "durationKind" "DurationKind" NOT NULL,
    "durationMinutes" INTEGER NOT NULL,
    "continuity" "Continuity" NOT NULL,
    "weatherLimitKey" TEXT,
    "state" "PhaseState" NOT NULL DEFAULT 'waiting',
    "origin" "Origin" NOT NULL,
    "requiredCrewId" UUID,
    "pinnedStart" TIMESTAMPTZ(3),
    "actualStart" TIMESTAMPTZ(3),
    "actualFinish" TIMESTAMPTZ(3),
    "actualCrewId" UUID,
    "remainingMinutes" INTEGER,
    "note" TEXT,
    "revision" INTEGER NOT NULL DEFAULT 1,

    CONSTRAINT "Phase_pkey" PRIMARY KEY ("id")
);

-- CreateTable
CREATE TABLE "Link" (
    "id" UUID NOT NULL,
    "companyId" UUID NOT NULL,
    "jobId" UUID NOT NULL,
    "fromId" UUID NOT NULL,
    "toId" UUID NOT NULL,
    "kind" "LinkKind" NOT NULL,
    "lagMinutes" INTEGER NOT NULL DEFAULT 0,
    "lagIn" "LagIn" NOT NULL DEFAULT 'elapsed',
    "origin" "Origin" NOT NULL,
    "revision" INTEGER NOT NULL DEFAULT 1,

    CONSTRAINT "Link_pkey" PRIMARY KEY ("id")
);

-- CreateTable
CREATE TABLE "EquipmentHold" (
    "id" UUID NOT NULL,
    "companyId" UUID NOT NULL,
    "poolId" UUID NOT NULL,
    "quantity" INTEGER NOT NULL,
    "fromPhaseId" UUID NOT NULL,
    "untilPhaseId" UUID NOT NULL,

    CONSTRAINT "EquipmentHold_pkey" PRIMARY KEY ("id")
);

-- CreateTable
CREATE TABLE "HoldPoint" (
    "id" UUID NOT NULL,
    "companyId" UUID NOT NULL,
    "jobId" UUID NOT NULL,
    "phaseId" UUID NOT NULL,
    "key" TEXT NOT NULL,
    "kind" "HoldPointKind" NOT NULL,
    "gate" "Gate" NOT NULL,
    "title" TEXT NOT NULL,
    "items" JSONB NOT NULL,
    "caution" TEXT,
    "waivable" BOOLEAN NOT NULL,
    "state" "HoldPointState" NOT NULL DEFAULT 'open',
    "inspectionId" UUID,
    "clearanceId" UUID,
    "heatingSetId" UUID,
    "placementPhaseId" UUID,
    "readingStage" "ReadingStage",
    "measured" JSONB,
    "findings" JSONB,
    "reason" TEXT,
    "decidedById" UUID,
    "decidedAt" TIMESTAMPTZ(3),
    "revision" INTEGER NOT NULL DEFAULT 1,

    CONSTRAINT "HoldPoint_pkey" PRIMARY KEY ("id")
);

-- CreateTable
CREATE TABLE "Clearance" (
    "id" UUID NOT NULL,
    "companyId" UUID NOT NULL,
    "jobId" UUID NOT NULL,
    "key" TEXT NOT NULL,
    "kind" "ClearanceKind" NOT NULL,
    "title" TEXT NOT NULL,
    "leadMinutes" INTEGER NOT NULL,
    "lifeDays" INTEGER,
    "state" "ClearanceState" NOT NULL DEFAULT 'needed',
    "requestedAt" TIMESTAMPTZ(3),
    "expectedAt" TIMESTAMPTZ(3),
    "clearedAt" TIMESTAMPTZ(3),
    "lapsesAt" TIMESTAMPTZ(3),
    "reference" TEXT,
    "revision" INTEGER NOT NULL DEFAULT 1,

    CONSTRAINT "Clearance_pkey" PRIMARY KEY ("id")
);

-- CreateTable
CREATE TABLE "Inspection" (
    "id" UUID NOT NULL,
    "companyId" UUID NOT NULL,
    "jobId" UUID NOT NULL,
    "phaseId" UUID NOT NULL,
    "authorityId" UUID,
    "key" TEXT NOT NULL,
    "title" TEXT NOT NULL,
    "state" "InspectionState" NOT NULL DEFAULT 'needed',
    "attempt" INTEGER NOT NULL DEFAULT 1,
    "previousId" UUID,
    "requestedAt" TIMESTAMPTZ(3),
    "visitFrom" TIMESTAMPTZ(3),
    "visitTo" TIMESTAMPTZ(3),
    "resultAt" TIMESTAMPTZ(3),
    "inspector" TEXT,
    "note" TEXT,
    "revision" INTEGER NOT NULL DEFAULT 1,

    CONSTRAINT "Inspection_pkey" PRIMARY KEY ("id")
);

-- CreateTable
CREATE TABLE "WeatherHold" (
    "id" UUID NOT NULL,
    "companyId" UUID NOT NULL,
    "siteId" UUID NOT NULL,
    "phaseId" UUID,
    "cause" "HoldCause" NOT NULL,
    "startsAt" TIMESTAMPTZ(3) NOT NULL,
    "endsAt" TIMESTAMPTZ(3),
    "reason" TEXT NOT NULL,
    "detail" JSONB,
    "calledById" UUID,
    "liftedAt" TIMESTAMPTZ(3),
    "liftedById" UUID,
    "liftReason" TEXT,
    "revision" INTEGER NOT NULL DEFAULT 1,

    CONSTRAINT "WeatherHold_pkey" PRIMARY KEY ("id")
);

-- CreateTable
CREATE TABLE "Placement" (
    "id" UUID NOT NULL,
    "companyId" UUID NOT NULL,
    "jobId" UUID NOT NULL,
    "phaseId" UUID NOT NULL,
    "placedAt" TIMESTAMPTZ(3) NOT NULL,
    "material" TEXT NOT NULL,
    "sectionInches" DOUBLE PRECISION NOT NULL,
    "placedTempF" DOUBLE PRECISION NOT NULL,
    "mixture" JSONB NOT NULL,
    "protection" JSONB NOT NULL,
    "requiredPsi" DOUBLE PRECISION NOT NULL,
    "predictedReleaseAt" TIMESTAMPTZ(3),
    "revision" INTEGER NOT NULL DEFAULT 1,

    CONSTRAINT "Placement_pkey" PRIMARY KEY ("id")
);

-- CreateTable
CREATE TABLE "TemperatureReading" (
    "id" UUID NOT NULL,
    "companyId" UUID NOT NULL,
    "placementId" UUID NOT NULL,
    "at" TIMESTAMPTZ(3) NOT NULL,
    "concreteF" DOUBLE PRECISION NOT NULL,
    "airF" DOUBLE PRECISION,
    "byId" UUID,

    CONSTRAINT "TemperatureReading_pkey" PRIMARY KEY ("id")
);

-- CreateTable
CREATE TABLE "HeatingSet" (
    "id" UUID NOT NULL,
    "companyId" UUID NOT NULL,
    "jobId" UUID NOT NULL,
    "key" TEXT NOT NULL,
    "name" TEXT NOT NULL,
    "watts" DOUBLE PRECISION NOT NULL,
    "volts" DOUBLE PRECISION NOT NULL,
    "ohms" DOUBLE PRECISION NOT NULL,
    "labelTempF" DOUBLE PRECISION NOT NULL DEFAULT 68,
    "heatedFeet" DOUBLE PRECISION NOT NULL,
    "coldLeadFeet" DOUBLE PRECISION NOT NULL,
    "coldLeadOhmsPerFoot" DOUBLE PRECISION NOT NULL DEFAULT 0,
    "tempCoefficient" DOUBLE PRECISION NOT NULL DEFAULT 0,
    "toleranceLow" DOUBLE PRECISION NOT NULL DEFAULT -0.05,
    "toleranceHigh" DOUBLE PRECISION NOT NULL DEFAULT 0.10,
    "minMegaohms" DOUBLE PRECISION NOT NULL DEFAULT 20,
    "insulationVolts" DOUBLE PRECISION NOT NULL DEFAULT 500,
    "minBendInches" DOUBLE PRECISION,
    "cureDays" INTEGER NOT NULL DEFAULT 28,
    "receivedAt" TIMESTAMPTZ(3),
    "revision" INTEGER NOT NULL DEFAULT 1,

    CONSTRAINT "HeatingSet_pkey" PRIMARY KEY ("id")
);

-- CreateTable
CREATE TABLE "HeatingSetArea" (
    "companyId" UUID NOT NULL,
    "heatingSetId" UUID NOT NULL,
    "areaId" UUID NOT NULL,
    "position" INTEGER NOT NULL,

    CONSTRAINT "HeatingSetArea_pkey" PRIMARY KEY ("heatingSetId","areaId")
);

-- CreateTable
CREATE TABLE "CableReading" (
    "id" UUID NOT NULL,
    "companyId" UUID NOT NULL,
    "heatingSetId" UUID NOT NULL,
    "stage" "ReadingStage" NOT NULL,
    "areaId" UUID,
    "at" TIMESTAMPTZ(3) NOT NULL,
    "ohms" DOUBLE PRECISION NOT NULL,
    "megaohms" DOUBLE PRECISION NOT NULL,
    "testVolts" DOUBLE PRECISION NOT NULL,
    "cableTempF" DOUBLE PRECISION NOT NULL,
    "byId" UUID,
    "accepted" BOOLEAN NOT NULL,
    "finding" JSONB NOT NULL,

    CONSTRAINT "CableReading_pkey" PRIMARY KEY ("id")
);

-- CreateTable
CREATE TABLE "Hookup" (
    "id" UUID NOT NULL,
    "companyId" UUID NOT NULL,
    "jobId" UUID NOT NULL,
    "heatingSetId" UUID NOT NULL,
    "phaseId" UUID NOT NULL,
    "electricianId" UUID,
    "state" "HookupState" NOT NULL DEFAULT 'waiting',
    "coldLeadThrough" BOOLEAN NOT NULL DEFAULT false,
    "coldLeadFreeInches" DOUBLE PRECISION,
    "sensorThrough" BOOLEAN NOT NULL DEFAULT false,
    "leadsLabelled" BOOLEAN NOT NULL DEFAULT false,
    "readyAt" TIMESTAMPTZ(3),
    "readyCount" INTEGER NOT NULL DEFAULT 0,
    "bookedFor" TIMESTAMPTZ(3),
    "doneAt" TIMESTAMPTZ(3),
    "doneById" UUID,
    "record" JSONB,
    "energiseAllowedAt" TIMESTAMPTZ(3),
    "energisedAt" TIMESTAMPTZ(3),
    "revision" INTEGER NOT NULL DEFAULT 1,

    CONSTRAINT "Hookup_pkey" PRIMARY KEY ("id")
);

-- CreateTable
CREATE TABLE "Plan" (
    "companyId" UUID NOT NULL,
    "number" INTEGER NOT NULL,
    "computedAt" TIMESTAMPTZ(3) NOT NULL,
    "cause" TEXT NOT NULL,
    "inputHash" TEXT NOT NULL,
    "outputHash" TEXT NOT NULL,
    "conflicts" JSONB NOT NULL,

    CONSTRAINT "Plan_pkey" PRIMARY KEY ("companyId","number")
);

-- CreateTable
CREATE TABLE "PlannedPhase" (
    "phaseId" UUID NOT NULL,
    "companyId" UUID NOT NULL,
    "planNumber" INTEGER NOT NULL,
    "startAt" TIMESTAMPTZ(3) NOT NULL,
    "finishAt" TIMESTAMPTZ(3) NOT NULL,
    "crewId" UUID,
    "segments" JSONB NOT NULL,
    "totalFloatMinutes" INTEGER NOT NULL,
    "freeFloatMinutes" INTEGER NOT NULL,
    "critical" BOOLEAN NOT NULL,
    "weatherUnknown" BOOLEAN NOT NULL,
    "reason" JSONB NOT NULL,

    CONSTRAINT "PlannedPhase_pkey" PRIMARY KEY ("phaseId")
);

-- CreateTable
CREATE TABLE "PlannedVisit" (
    "inspectionId" UUID NOT NULL,
    "companyId" UUID NOT NULL,
    "planNumber" INTEGER NOT NULL,
    "startAt" TIMESTAMPTZ(3) NOT NULL,
    "finishAt" TIMESTAMPTZ(3) NOT NULL,
    "requestBy" TIMESTAMPTZ(3) NOT NULL,

    CONSTRAINT "PlannedVisit_pkey" PRIMARY KEY ("inspectionId")
);

-- CreateTable
CREATE TABLE "Commitment" (
    "id" UUID NOT NULL,
    "companyId" UUID NOT NULL,
    "phaseId" UUID NOT NULL,
    "crewId" UUID,
    "startAt" TIMESTAMPTZ(3) NOT NULL,
    "finishAt" TIMESTAMPTZ(3) NOT NULL,
    "state" "CommitmentState" NOT NULL DEFAULT 'held',
    "madeAt" TIMESTAMPTZ(3) NOT NULL,
    "madeById" UUID,

    CONSTRAINT "Commitment_pkey" PRIMARY KEY ("id")
);

-- CreateTable
CREATE TABLE "Proposal" (
    "id" UUID NOT NULL,
    "companyId" UUID NOT NULL,
    "number" INTEGER NOT NULL,
    "planNumber" INTEGER NOT NULL,
    "cause" TEXT NOT NULL,
    "state" "ProposalState" NOT NULL DEFAULT 'open',
    "differences" JSONB NOT NULL,
    "createdAt" TIMESTAMPTZ(3) NOT NULL,
    "decidedAt" TIMESTAMPTZ(3),
    "decidedById" UUID,
    "revision" INTEGER NOT NULL DEFAULT 1,

    CONSTRAINT "Proposal_pkey" PRIMARY KEY ("id")
);

-- CreateTable
CREATE TABLE "Reminder" (
    "id" UUID NOT NULL,
    "companyId" UUID NOT NULL,
    "jobId" UUID,
    "kind" TEXT NOT NULL,
    "subjectType" TEXT NOT NULL,
    "subjectId" UUID NOT NULL,
    "dueAt" TIMESTAMPTZ(3) NOT NULL,
    "usefulUntil" TIMESTAMPTZ(3) NOT NULL,
    "state" "ReminderState" NOT NULL DEFAULT 'pending',
    "generation" INTEGER NOT NULL DEFAULT 1,
    "detail" JSONB NOT NULL,
    "queuedAt" TIMESTAMPTZ(3),

    CONSTRAINT "Reminder_pkey" PRIMARY KEY ("id")
);

-- CreateTable
CREATE TABLE "Notice" (
    "id" UUID NOT NULL,
    "companyId" UUID NOT NULL,
    "jobId" UUID,
    "kind" TEXT NOT NULL,
    "sourceKey" TEXT NOT NULL,
    "subjectType" TEXT NOT NULL,
    "subjectId" UUID NOT NULL,
    "detail" JSONB NOT NULL,
    "createdAt" TIMESTAMPTZ(3) NOT NULL,

    CONSTRAINT "Notice_pkey" PRIMARY KEY ("id")
);

-- CreateTable
CREATE TABLE "Delivery" (
    "id" UUID NOT NULL,
    "companyId" UUID NOT NULL,
    "noticeId" UUID NOT NULL,
    "recipientId" UUID NOT NULL,
    "channel" TEXT NOT NULL,
    "state" "DeliveryState" NOT NULL DEFAULT 'claimed',
    "attempts" INTEGER NOT NULL DEFAULT 0,
    "claimedAt" TIMESTAMPTZ(3) NOT NULL,
    "sentAt" TIMESTAMPTZ(3),
    "notBefore" TIMESTAMPTZ(3),
    "providerId" TEXT,
    "error" TEXT,

    CONSTRAINT "Delivery_pkey" PRIMARY KEY ("id")
);

-- CreateTable
CREATE TABLE "Outbox" (
    "id" BIGSERIAL NOT NULL,
    "companyId" UUID NOT NULL,
    "topic" TEXT NOT NULL,
    "payload" JSONB NOT NULL,
    "createdAt" TIMESTAMPTZ(3) NOT NULL,
    "dueAt" TIMESTAMPTZ(3) NOT NULL,
    "queuedAt" TIMESTAMPTZ(3),
    "doneAt" TIMESTAMPTZ(3),
    "attempts" INTEGER NOT NULL DEFAULT 0,
    "error" TEXT,

    CONSTRAINT "Outbox_pkey" PRIMARY KEY ("id")
);

-- CreateTable
CREATE TABLE "IdempotencyKey" (
    "companyId" UUID NOT NULL,
    "personId" UUID NOT NULL,
    "key" TEXT NOT NULL,
    "operation" TEXT NOT NULL,
    "fingerprint" TEXT NOT NULL,
    "answer" JSONB,
    "createdAt" TIMESTAMPTZ(3) NOT NULL,

    CONSTRAINT "IdempotencyKey_pkey" PRIMARY KEY ("companyId","personId","key")
);

-- CreateTable
CREATE TABLE "JournalEntry" (
    "id" BIGSERIAL NOT NULL,
    "companyId" UUID NOT NULL,
    "at" TIMESTAMPTZ(3) NOT NULL,
    "personId" UUID,
    "jobId" UUID,
    "action" TEXT NOT NULL,
    "subjectType" TEXT NOT NULL,
    "subjectId" UUID NOT NULL,
    "detail" JSONB NOT NULL,
    "reason" TEXT,

    CONSTRAINT "JournalEntry_pkey" PRIMARY KEY ("id")
);

-- CreateIndex
CREATE UNIQUE INDEX "Person_email_key" ON "Person"("email");

-- CreateIndex
CREATE INDEX "Person_companyId_idx" ON "Person"("companyId");

-- CreateIndex
CREATE UNIQUE INDEX "Session_tokenHash_key" ON "Session"("tokenHash");

-- CreateIndex
CREATE INDEX "Session_personId_idx" ON "Session"("personId");

-- CreateIndex
CREATE UNIQUE INDEX "Crew_companyId_name_key" ON "Crew"("companyId", "name");

-- CreateIndex
CREATE INDEX "CrewMember_personId_idx" ON "CrewMember"("personId");

-- CreateIndex
CREATE UNIQUE INDEX "CrewException_crewId_day_key" ON "CrewException"("crewId", "day");

-- CreateIndex
CREATE UNIQUE INDEX "EquipmentPool_companyId_kind_key" ON "EquipmentPool"("companyId", "kind");

-- CreateIndex
CREATE UNIQUE INDEX "Authority_companyId_name_key" ON "Authority"("companyId", "name");

-- CreateIndex
CREATE INDEX "Site_companyId_idx" ON "Site"("companyId");

-- CreateIndex
CREATE INDEX "Forecast_siteId_issuedAt_idx" ON "Forecast"("siteId", "issuedAt");

-- CreateIndex
CREATE UNIQUE INDEX "WeatherLimitSet_companyId_key_key" ON "WeatherLimitSet"("companyId", "key");

-- CreateIndex
CREATE UNIQUE INDEX "Template_companyId_name_key" ON "Template"("companyId", "name");

-- CreateIndex
CREATE INDEX "Job_siteId_idx" ON "Job"("siteId");

-- CreateIndex
CREATE UNIQUE INDEX "Job_companyId_number_key" ON "Job"("companyId", "number");

-- CreateIndex
CREATE UNIQUE INDEX "Area_jobId_key_key" ON "Area"("jobId", "key");

-- CreateIndex
CREATE INDEX "Phase_companyId_state_idx" ON "Phase"("companyId", "state");

-- CreateIndex
CREATE UNIQUE INDEX "Phase_jobId_key_key" ON "Phase"("jobId", "key");

-- CreateIndex
CREATE INDEX "Link_jobId_idx" ON "Link"("jobId");

-- CreateIndex
CREATE INDEX "Link_toId_idx" ON "Link"("toId");

-- CreateIndex
CREATE UNIQUE INDEX "Link_fromId_toId_kind_key" ON "Link"("fromId", "toId", "kind");

-- CreateIndex
CREATE INDEX "EquipmentHold_fromPhaseId_idx" ON "EquipmentHold"("fromPhaseId");

-- CreateIndex
CREATE INDEX "EquipmentHold_untilPhaseId_idx" ON "EquipmentHold"("untilPhaseId");

-- CreateIndex
CREATE UNIQUE INDEX "EquipmentHold_poolId_fromPhaseId_key" ON "EquipmentHold"("poolId", "fromPhaseId");

-- CreateIndex
CREATE UNIQUE INDEX "HoldPoint_inspectionId_key" ON "HoldPoint"("inspectionId");

-- CreateIndex
CREATE INDEX "HoldPoint_jobId_idx" ON "HoldPoint"("jobId");

-- CreateIndex
CREATE INDEX "HoldPoint_clearanceId_idx" ON "HoldPoint"("clearanceId");

-- CreateIndex
CREATE UNIQUE INDEX "HoldPoint_phaseId_key_key" ON "HoldPoint"("phaseId", "key");

-- CreateIndex
CREATE UNIQUE INDEX "Clearance_jobId_key_key" ON "Clearance"("jobId", "key");

-- CreateIndex
CREATE UNIQUE INDEX "Inspection_previousId_key" ON "Inspection"("previousId");

-- CreateIndex
CREATE INDEX "Inspection_phaseId_idx" ON "Inspection"("phaseId");

-- CreateIndex
CREATE UNIQUE INDEX "Inspection_jobId_key_attempt_key" ON "Inspection"("jobId", "key", "attempt");

-- CreateIndex
CREATE INDEX "WeatherHold_siteId_liftedAt_idx" ON "WeatherHold"("siteId", "liftedAt");

-- CreateIndex
CREATE INDEX "WeatherHold_phaseId_idx" ON "WeatherHold"("phaseId");

-- CreateIndex
CREATE INDEX "Placement_jobId_idx" ON "Placement"("jobId");

-- CreateIndex
CREATE INDEX "Placement_phaseId_idx" ON "Placement"("phaseId");

-- CreateIndex
CREATE UNIQUE INDEX "TemperatureReading_placementId_at_key" ON "TemperatureReading"("placementId", "at");

-- CreateIndex
CREATE UNIQUE INDEX "HeatingSet_jobId_key_key" ON "HeatingSet"("jobId", "key");

-- CreateIndex
CREATE INDEX "HeatingSetArea_areaId_idx" ON "HeatingSetArea"("areaId");

-- CreateIndex
CREATE UNIQUE INDEX "HeatingSetArea_heatingSetId_position_key" ON "HeatingSetArea"("heatingSetId", "position");

-- CreateIndex
CREATE INDEX "CableReading_heatingSetId_at_idx" ON "CableReading"("heatingSetId", "at");

-- CreateIndex
CREATE UNIQUE INDEX "Hookup_heatingSetId_key" ON "Hookup"("heatingSetId");

-- CreateIndex
CREATE INDEX "Hookup_jobId_idx" ON "Hookup"("jobId");

-- CreateIndex
CREATE INDEX "Hookup_phaseId_idx" ON "Hookup"("phaseId");

-- CreateIndex
CREATE INDEX "PlannedPhase_companyId_startAt_idx" ON "PlannedPhase"("companyId", "startAt");

-- CreateIndex
CREATE INDEX "PlannedPhase_companyId_finishAt_idx" ON "PlannedPhase"("companyId", "finishAt");

-- CreateIndex
CREATE INDEX "PlannedVisit_companyId_idx" ON "PlannedVisit"("companyId");

-- CreateIndex
CREATE INDEX "Commitment_companyId_state_idx" ON "Commitment"("companyId", "state");

-- CreateIndex
CREATE INDEX "Commitment_phaseId_idx" ON "Commitment"("phaseId");

-- CreateIndex
CREATE UNIQUE INDEX "Proposal_companyId_number_key" ON "Proposal"("companyId", "number");

-- CreateIndex
CREATE INDEX "Reminder_state_dueAt_idx" ON "Reminder"("state", "dueAt");

-- CreateIndex
CREATE INDEX "Reminder_companyId_state_idx" ON "Reminder"("companyId", "state");

-- CreateIndex
CREATE UNIQUE INDEX "Reminder_kind_subjectId_key" ON "Reminder"("kind", "subjectId");

-- CreateIndex
CREATE INDEX "Notice_jobId_idx" ON "Notice"("jobId");

-- CreateIndex
CREATE UNIQUE INDEX "Notice_companyId_sourceKey_key" ON "Notice"("companyId", "sourceKey");

-- CreateIndex
CREATE INDEX "Delivery_state_claimedAt_idx" ON "Delivery"("state", "claimedAt");

-- CreateIndex
CREATE UNIQUE INDEX "Delivery_noticeId_recipientId_channel_key" ON "Delivery"("noticeId", "recipientId", "channel");

-- CreateIndex
CREATE INDEX "Outbox_doneAt_queuedAt_dueAt_idx" ON "Outbox"("doneAt", "queuedAt", "dueAt");

-- CreateIndex
CREATE INDEX "JournalEntry_companyId_id_idx" ON "JournalEntry"("companyId", "id");

-- CreateIndex
CREATE INDEX "JournalEntry_jobId_id_idx" ON "JournalEntry"("jobId", "id");

-- AddForeignKey
ALTER TABLE "Person" ADD CONSTRAINT "Person_companyId_fkey" FOREIGN KEY ("companyId") REFERENCES "Company"("id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "Session" ADD CONSTRAINT "Session_personId_fkey" FOREIGN KEY ("personId") REFERENCES "Person"("id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "Crew" ADD CONSTRAINT "Crew_companyId_fkey" FOREIGN KEY ("companyId") REFERENCES "Company"("id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "CrewMember" ADD CONSTRAINT "CrewMember_crewId_fkey" FOREIGN KEY ("crewId") REFERENCES "Crew"("id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "CrewMember" ADD CONSTRAINT "CrewMember_personId_fkey" FOREIGN KEY ("personId") REFERENCES "Person"("id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "CrewException" ADD CONSTRAINT "CrewException_crewId_fkey" FOREIGN KEY ("crewId") REFERENCES "Crew"("id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "Site" ADD CONSTRAINT "Site_companyId_fkey" FOREIGN KEY ("companyId") REFERENCES "Company"("id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "Site" ADD CONSTRAINT "Site_authorityId_fkey" FOREIGN KEY ("authorityId") REFERENCES "Authority"("id") ON DELETE SET NULL ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "Forecast" ADD CONSTRAINT "Forecast_siteId_fkey" FOREIGN KEY ("siteId") REFERENCES "Site"("id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "Template" ADD CONSTRAINT "Template_companyId_fkey" FOREIGN KEY ("companyId") REFERENCES "Company"("id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "Job" ADD CONSTRAINT "Job_companyId_fkey" FOREIGN KEY ("companyId") REFERENCES "Company"("id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "Job" ADD CONSTRAINT "Job_siteId_fkey" FOREIGN KEY ("siteId") REFERENCES "Site"("id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "Job" ADD CONSTRAINT "Job_templateId_fkey" FOREIGN KEY ("templateId") REFERENCES "Template"("id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "Area" ADD CONSTRAINT "Area_jobId_fkey" FOREIGN KEY ("jobId") REFERENCES "Job"("id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "Phase" ADD CONSTRAINT "Phase_jobId_fkey" FOREIGN KEY ("jobId") REFERENCES "Job"("id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "Phase" ADD CONSTRAINT "Phase_areaId_fkey" FOREIGN KEY ("areaId") REFERENCES "Area"("id") ON DELETE SET NULL ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "Link" ADD CONSTRAINT "Link_jobId_fkey" FOREIGN KEY ("jobId") REFERENCES "Job"("id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "Link" ADD CONSTRAINT "Link_fromId_fkey" FOREIGN KEY ("fromId") REFERENCES "Phase"("id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "Link" ADD CONSTRAINT "Link_toId_fkey" FOREIGN KEY ("toId") REFERENCES "Phase"("id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "EquipmentHold" ADD CONSTRAINT "EquipmentHold_poolId_fkey" FOREIGN KEY ("poolId") REFERENCES "EquipmentPool"("id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "EquipmentHold" ADD CONSTRAINT "EquipmentHold_fromPhaseId_fkey" FOREIGN KEY ("fromPhaseId") REFERENCES "Phase"("id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "EquipmentHold" ADD CONSTRAINT "EquipmentHold_untilPhaseId_fkey" FOREIGN KEY ("untilPhaseId") REFERENCES "Phase"("id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "HoldPoint" ADD CONSTRAINT "HoldPoint_jobId_fkey" FOREIGN KEY ("jobId") REFERENCES "Job"("id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "HoldPoint" ADD CONSTRAINT "HoldPoint_phaseId_fkey" FOREIGN KEY ("phaseId") REFERENCES "Phase"("id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "HoldPoint" ADD CONSTRAINT "HoldPoint_inspectionId_fkey" FOREIGN KEY ("inspectionId") REFERENCES "Inspection"("id") ON DELETE SET NULL ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "HoldPoint" ADD CONSTRAINT "HoldPoint_clearanceId_fkey" FOREIGN KEY ("clearanceId") REFERENCES "Clearance"("id") ON DELETE SET NULL ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "HoldPoint" ADD CONSTRAINT "HoldPoint_heatingSetId_fkey" FOREIGN KEY ("heatingSetId") REFERENCES "HeatingSet"("id") ON DELETE SET NULL ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "Clearance" ADD CONSTRAINT "Clearance_jobId_fkey" FOREIGN KEY ("jobId") REFERENCES "Job"("id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "Inspection" ADD CONSTRAINT "Inspection_jobId_fkey" FOREIGN KEY ("jobId") REFERENCES "Job"("id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "Inspection" ADD CONSTRAINT "Inspection_phaseId_fkey" FOREIGN KEY ("phaseId") REFERENCES "Phase"("id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "Inspection" ADD CONSTRAINT "Inspection_authorityId_fkey" FOREIGN KEY ("authorityId") REFERENCES "Authority"("id") ON DELETE SET NULL ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "Inspection" ADD CONSTRAINT "Inspection_previousId_fkey" FOREIGN KEY ("previousId") REFERENCES "Inspection"("id") ON DELETE SET NULL ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "WeatherHold" ADD CONSTRAINT "WeatherHold_siteId_fkey" FOREIGN KEY ("siteId") REFERENCES "Site"("id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "WeatherHold" ADD CONSTRAINT "WeatherHold_phaseId_fkey" FOREIGN KEY ("phaseId") REFERENCES "Phase"("id") ON DELETE SET NULL ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "Placement" ADD CONSTRAINT "Placement_jobId_fkey" FOREIGN KEY ("jobId") REFERENCES "Job"("id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "Placement" ADD CONSTRAINT "Placement_phaseId_fkey" FOREIGN KEY ("phaseId") REFERENCES "Phase"("id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "TemperatureReading" ADD CONSTRAINT "TemperatureReading_placementId_fkey" FOREIGN KEY ("placementId") REFERENCES "Placement"("id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "HeatingSet" ADD CONSTRAINT "HeatingSet_jobId_fkey" FOREIGN KEY ("jobId") REFERENCES "Job"("id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "HeatingSetArea" ADD CONSTRAINT "HeatingSetArea_heatingSetId_fkey" FOREIGN KEY ("heatingSetId") REFERENCES "HeatingSet"("id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "HeatingSetArea" ADD CONSTRAINT "HeatingSetArea_areaId_fkey" FOREIGN KEY ("areaId") REFERENCES "Area"("id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "CableReading" ADD CONSTRAINT "CableReading_heatingSetId_fkey" FOREIGN KEY ("heatingSetId") REFERENCES "HeatingSet"("id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "Hookup" ADD CONSTRAINT "Hookup_jobId_fkey" FOREIGN KEY ("jobId") REFERENCES "Job"("id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "Hookup" ADD CONSTRAINT "Hookup_heatingSetId_fkey" FOREIGN KEY ("heatingSetId") REFERENCES "HeatingSet"("id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "Hookup" ADD CONSTRAINT "Hookup_phaseId_fkey" FOREIGN KEY ("phaseId") REFERENCES "Phase"("id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "Hookup" ADD CONSTRAINT "Hookup_electricianId_fkey" FOREIGN KEY ("electricianId") REFERENCES "Person"("id") ON DELETE SET NULL ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "PlannedPhase" ADD CONSTRAINT "PlannedPhase_phaseId_fkey" FOREIGN KEY ("phaseId") REFERENCES "Phase"("id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "PlannedVisit" ADD CONSTRAINT "PlannedVisit_inspectionId_fkey" FOREIGN KEY ("inspectionId") REFERENCES "Inspection"("id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "Commitment" ADD CONSTRAINT "Commitment_phaseId_fkey" FOREIGN KEY ("phaseId") REFERENCES "Phase"("id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "Commitment" ADD CONSTRAINT "Commitment_crewId_fkey" FOREIGN KEY ("crewId") REFERENCES "Crew"("id") ON DELETE SET NULL ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "Delivery" ADD CONSTRAINT "Delivery_noticeId_fkey" FOREIGN KEY ("noticeId") REFERENCES "Notice"("id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "Delivery" ADD CONSTRAINT "Delivery_recipientId_fkey" FOREIGN KEY ("recipientId") REFERENCES "Person"("id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- What the schema language cannot say. ------------------------------------------------------------

create extension if not exists btree_gist;

-- No two commitments of one crew may overlap; a commitment that ends when another begins does not.
alter table "Commitment"
  add constraint "Commitment_crew_once" exclude using gist
  ("crewId" with =, tstzrange("startAt", "finishAt") with &&)
  where (state = 'held' and "crewId" is not null);

-- A phase is committed at most once at a time.
create unique index "Commitment_phase_once" on "Commitment" ("phaseId") where (state = 'held');

-- A company has at most one open proposal.
create unique index "Proposal_open_once" on "Proposal" ("companyId") where (state = 'open');

alter table "Commitment" add constraint "Commitment_forward" check ("finishAt" >= "startAt");
alter table "Phase" add constraint "Phase_duration" check ("durationMinutes" >= 0);
alter table "Phase" add constraint "Phase_actuals" check (
  ("actualFinish" is null or ("actualStart" is not null and "actualFinish" >= "actualStart"))
  and (state <> 'done' or "actualFinish" is not null)
  and (state <> 'waiting' or "actualStart" is null));
alter table "Link" add constraint "Link_two_phases" check ("fromId" <> "toId");
alter table "EquipmentPool" add constraint "EquipmentPool_quantity" check (quantity >= 0);
alter table "EquipmentHold" add constraint "EquipmentHold_quantity" check (quantity > 0);
alter table "Crew" add constraint "Crew_size" check (size > 0);
alter table "WeatherHold" add constraint "WeatherHold_forward" check ("endsAt" is null or "endsAt" > "startsAt");
alter table "Inspection" add constraint "Inspection_visit" check (
  state <> 'booked' or ("visitFrom" is not null and "visitTo" is not null and "visitTo" > "visitFrom"));
-- An authority's inspection or a cable reading can never be waived.
alter table "HoldPoint" add constraint "HoldPoint_waiver" check (
  state <> 'waived' or (waivable and kind not in ('inspection', 'reading') and reason is not null));

-- The journal is written once.
create function journal_is_final() returns trigger language plpgsql as $$
begin
  raise exception 'The journal is written once; add a new entry instead.';
end;
$$;
create trigger journal_is_final before update or delete on "JournalEntry"
  for each row execute function journal_is_final();
