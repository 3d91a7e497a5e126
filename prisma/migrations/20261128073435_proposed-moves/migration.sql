-- CreateEnum
CREATE TYPE "MoveWay" AS ENUM ('notBefore', 'fixed');

-- CreateEnum
CREATE TYPE "ProposedMoveState" AS ENUM ('offered', 'accepted', 'dropped', 'outdated', 'unchanged', 'undone');

-- AlterEnum
ALTER TYPE "ProposalState" ADD VALUE 'undone';

-- AlterTable
ALTER TABLE "Phase" ADD COLUMN     "notBefore" TIMESTAMPTZ(3);

-- AlterTable
ALTER TABLE "Proposal" ADD COLUMN     "acceptedPlan" INTEGER,
ADD COLUMN     "former" JSONB,
ADD COLUMN     "moveId" UUID;

-- CreateTable
CREATE TABLE "ProposedMove" (
    "id" UUID NOT NULL,
    "companyId" UUID NOT NULL,
    "phaseId" UUID NOT NULL,
    "way" "MoveWay" NOT NULL,
    "startAt" TIMESTAMPTZ(3) NOT NULL,
    "crewId" UUID,
    "state" "ProposedMoveState" NOT NULL DEFAULT 'offered',
    "askedAt" TIMESTAMPTZ(3) NOT NULL,
    "askedById" UUID,
    "endedAt" TIMESTAMPTZ(3),
    "message" TEXT,
    "revision" INTEGER NOT NULL DEFAULT 1,

    CONSTRAINT "ProposedMove_pkey" PRIMARY KEY ("id")
);

-- CreateIndex
CREATE INDEX "ProposedMove_companyId_state_idx" ON "ProposedMove"("companyId", "state");

-- CreateIndex
CREATE INDEX "ProposedMove_phaseId_idx" ON "ProposedMove"("phaseId");

-- CreateIndex
CREATE INDEX "Proposal_moveId_idx" ON "Proposal"("moveId");

-- AddForeignKey
ALTER TABLE "Proposal" ADD CONSTRAINT "Proposal_moveId_fkey" FOREIGN KEY ("moveId") REFERENCES "ProposedMove"("id") ON DELETE SET NULL ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "ProposedMove" ADD CONSTRAINT "ProposedMove_phaseId_fkey" FOREIGN KEY ("phaseId") REFERENCES "Phase"("id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- One open proposal that follows the plan in force, one that offers an improved order, and one that offers a move.
DROP INDEX "Proposal_open_once";
CREATE UNIQUE INDEX "Proposal_open_once" ON "Proposal" ("companyId", ("improvementId" IS NULL), ("moveId" IS NULL)) WHERE "state" = 'open';
ALTER TABLE "Proposal" ADD CONSTRAINT "Proposal_offers_one_thing" CHECK ("improvementId" IS NULL OR "moveId" IS NULL);

-- The office tries one move at a time.
CREATE UNIQUE INDEX "ProposedMove_offered_once" ON "ProposedMove" ("companyId") WHERE "state" = 'offered';
