-- CreateEnum
CREATE TYPE "ProtectionBranch" AS ENUM ('protect', 'wait');

-- AlterTable
ALTER TABLE "Placement" ADD COLUMN     "protectionOffAt" TIMESTAMPTZ(3),
ADD COLUMN     "protectionOffReason" TEXT,
ADD COLUMN     "protectionPlan" JSONB,
ADD COLUMN     "watchedPrint" TEXT;

-- AlterTable
ALTER TABLE "TemperatureReading" ADD COLUMN     "loggerId" UUID;

-- CreateTable
CREATE TABLE "Logger" (
    "id" UUID NOT NULL,
    "companyId" UUID NOT NULL,
    "siteId" UUID NOT NULL,
    "placementId" UUID,
    "name" TEXT NOT NULL,
    "tokenHash" TEXT NOT NULL,
    "createdAt" TIMESTAMPTZ(3) NOT NULL,
    "createdById" UUID,
    "lastPostAt" TIMESTAMPTZ(3),
    "minuteFrom" TIMESTAMPTZ(3),
    "minutePosts" INTEGER NOT NULL DEFAULT 0,
    "revokedAt" TIMESTAMPTZ(3),
    "revokedById" UUID,
    "revision" INTEGER NOT NULL DEFAULT 1,

    CONSTRAINT "Logger_pkey" PRIMARY KEY ("id")
);

-- CreateTable
CREATE TABLE "CureAlarm" (
    "id" UUID NOT NULL,
    "companyId" UUID NOT NULL,
    "jobId" UUID NOT NULL,
    "placementId" UUID NOT NULL,
    "kind" TEXT NOT NULL,
    "finding" JSONB NOT NULL,
    "openedAt" TIMESTAMPTZ(3) NOT NULL,
    "clearedAt" TIMESTAMPTZ(3),

    CONSTRAINT "CureAlarm_pkey" PRIMARY KEY ("id")
);

-- CreateTable
CREATE TABLE "ProtectionChoice" (
    "id" UUID NOT NULL,
    "companyId" UUID NOT NULL,
    "phaseId" UUID NOT NULL,
    "branch" "ProtectionBranch" NOT NULL,
    "plan" JSONB,
    "cureMinutes" INTEGER,
    "comparison" JSONB NOT NULL,
    "reason" TEXT,
    "chosenAt" TIMESTAMPTZ(3) NOT NULL,
    "chosenById" UUID,
    "revision" INTEGER NOT NULL DEFAULT 1,

    CONSTRAINT "ProtectionChoice_pkey" PRIMARY KEY ("id")
);

-- CreateIndex
CREATE UNIQUE INDEX "Logger_tokenHash_key" ON "Logger"("tokenHash");

-- CreateIndex
CREATE INDEX "Logger_siteId_idx" ON "Logger"("siteId");

-- CreateIndex
CREATE INDEX "Logger_placementId_idx" ON "Logger"("placementId");

-- CreateIndex
CREATE INDEX "CureAlarm_placementId_clearedAt_idx" ON "CureAlarm"("placementId", "clearedAt");

-- CreateIndex
CREATE INDEX "CureAlarm_companyId_clearedAt_idx" ON "CureAlarm"("companyId", "clearedAt");

-- CreateIndex
CREATE UNIQUE INDEX "ProtectionChoice_phaseId_key" ON "ProtectionChoice"("phaseId");

-- CreateIndex
CREATE INDEX "ProtectionChoice_companyId_idx" ON "ProtectionChoice"("companyId");

-- AddForeignKey
ALTER TABLE "TemperatureReading" ADD CONSTRAINT "TemperatureReading_loggerId_fkey" FOREIGN KEY ("loggerId") REFERENCES "Logger"("id") ON DELETE SET NULL ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "Logger" ADD CONSTRAINT "Logger_siteId_fkey" FOREIGN KEY ("siteId") REFERENCES "Site"("id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "Logger" ADD CONSTRAINT "Logger_placementId_fkey" FOREIGN KEY ("placementId") REFERENCES "Placement"("id") ON DELETE SET NULL ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "CureAlarm" ADD CONSTRAINT "CureAlarm_placementId_fkey" FOREIGN KEY ("placementId") REFERENCES "Placement"("id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "ProtectionChoice" ADD CONSTRAINT "ProtectionChoice_phaseId_fkey" FOREIGN KEY ("phaseId") REFERENCES "Phase"("id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- One alarm of a kind at a placement at a time; an alarm does not end before it was found.
CREATE UNIQUE INDEX "CureAlarm_standing_key" ON "CureAlarm"("placementId", "kind") WHERE "clearedAt" IS NULL;
ALTER TABLE "CureAlarm" ADD CONSTRAINT "CureAlarm_ends_after_it_began" CHECK ("clearedAt" IS NULL OR "clearedAt" >= "openedAt");

-- A chosen protection says which; waiting has none.
ALTER TABLE "ProtectionChoice" ADD CONSTRAINT "ProtectionChoice_plan_of_branch" CHECK (("branch" = 'protect') = ("plan" IS NOT NULL));
