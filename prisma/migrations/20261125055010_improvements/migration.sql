-- CreateEnum
CREATE TYPE "ImprovementState" AS ENUM ('waiting', 'running', 'offered', 'accepted', 'dropped', 'outdated', 'unchanged', 'stopped', 'failed');

-- CreateEnum
CREATE TYPE "ImprovementStop" AS ENUM ('keep', 'discard');

-- AlterTable
ALTER TABLE "Proposal" ADD COLUMN     "improvementId" UUID;

-- CreateTable
CREATE TABLE "Improvement" (
    "id" UUID NOT NULL,
    "companyId" UUID NOT NULL,
    "state" "ImprovementState" NOT NULL DEFAULT 'waiting',
    "seconds" INTEGER NOT NULL,
    "seed" INTEGER NOT NULL,
    "weights" JSONB,
    "askedAt" TIMESTAMPTZ(3) NOT NULL,
    "askedById" UUID,
    "queuedAt" TIMESTAMPTZ(3),
    "startedAt" TIMESTAMPTZ(3),
    "endedAt" TIMESTAMPTZ(3),
    "workerId" UUID,
    "aliveAt" TIMESTAMPTZ(3),
    "attempts" INTEGER NOT NULL DEFAULT 0,
    "stop" "ImprovementStop",
    "schedules" INTEGER NOT NULL DEFAULT 0,
    "progress" JSONB,
    "order" JSONB,
    "inputHash" TEXT,
    "outcome" JSONB,
    "message" TEXT,
    "appliedPlan" INTEGER,
    "revision" INTEGER NOT NULL DEFAULT 1,

    CONSTRAINT "Improvement_pkey" PRIMARY KEY ("id")
);

-- CreateIndex
CREATE INDEX "Improvement_companyId_state_idx" ON "Improvement"("companyId", "state");

-- CreateIndex
CREATE INDEX "Proposal_improvementId_idx" ON "Proposal"("improvementId");

-- AddForeignKey
ALTER TABLE "Proposal" ADD CONSTRAINT "Proposal_improvementId_fkey" FOREIGN KEY ("improvementId") REFERENCES "Improvement"("id") ON DELETE SET NULL ON UPDATE CASCADE;

-- One open proposal that follows the plan in force, and beside it one that offers an improved order.
DROP INDEX "Proposal_open_once";
CREATE UNIQUE INDEX "Proposal_open_once" ON "Proposal" ("companyId", ("improvementId" IS NULL)) WHERE "state" = 'open';

-- One search of a company at a time, and no longer than ten minutes.
CREATE UNIQUE INDEX "Improvement_at_work_once" ON "Improvement" ("companyId") WHERE "state" IN ('waiting', 'running');
ALTER TABLE "Improvement" ADD CONSTRAINT "Improvement_seconds_bounded" CHECK ("seconds" BETWEEN 1 AND 600);
ALTER TABLE "Improvement" ADD CONSTRAINT "Improvement_at_work_has_a_worker" CHECK (("state" = 'running') <= ("workerId" IS NOT NULL AND "aliveAt" IS NOT NULL));
