-- CreateEnum
CREATE TYPE "LinkPurpose" AS ENUM ('hookup', 'ownerWeek');

-- AlterTable
ALTER TABLE "Hookup" ADD COLUMN     "bookedBy" TEXT,
ADD COLUMN     "doneBy" TEXT;

-- CreateTable
CREATE TABLE "SignedLink" (
    "id" UUID NOT NULL,
    "companyId" UUID NOT NULL,
    "jobId" UUID NOT NULL,
    "purpose" "LinkPurpose" NOT NULL,
    "recipient" TEXT NOT NULL,
    "personId" UUID,
    "tokenHash" TEXT NOT NULL,
    "createdAt" TIMESTAMPTZ(3) NOT NULL,
    "createdById" UUID,
    "expiresAt" TIMESTAMPTZ(3) NOT NULL,
    "revokedAt" TIMESTAMPTZ(3),
    "revokedById" UUID,
    "refusedOpenings" INTEGER NOT NULL DEFAULT 0,
    "revision" INTEGER NOT NULL DEFAULT 1,

    CONSTRAINT "SignedLink_pkey" PRIMARY KEY ("id")
);

-- CreateTable
CREATE TABLE "LinkSession" (
    "id" UUID NOT NULL,
    "companyId" UUID NOT NULL,
    "linkId" UUID NOT NULL,
    "tokenHash" TEXT NOT NULL,
    "browser" TEXT NOT NULL,
    "openedAt" TIMESTAMPTZ(3) NOT NULL,
    "lastSeenAt" TIMESTAMPTZ(3) NOT NULL,
    "minuteFrom" TIMESTAMPTZ(3) NOT NULL,
    "minuteAsks" INTEGER NOT NULL DEFAULT 0,

    CONSTRAINT "LinkSession_pkey" PRIMARY KEY ("id")
);

-- CreateTable
CREATE TABLE "LinkGuesses" (
    "address" TEXT NOT NULL,
    "minuteFrom" TIMESTAMPTZ(3) NOT NULL,
    "guesses" INTEGER NOT NULL,

    CONSTRAINT "LinkGuesses_pkey" PRIMARY KEY ("address")
);

-- CreateIndex
CREATE UNIQUE INDEX "SignedLink_tokenHash_key" ON "SignedLink"("tokenHash");

-- CreateIndex
CREATE INDEX "SignedLink_companyId_idx" ON "SignedLink"("companyId");

-- CreateIndex
CREATE INDEX "SignedLink_jobId_idx" ON "SignedLink"("jobId");

-- CreateIndex
CREATE UNIQUE INDEX "LinkSession_tokenHash_key" ON "LinkSession"("tokenHash");

-- CreateIndex
CREATE INDEX "LinkSession_linkId_idx" ON "LinkSession"("linkId");

-- CreateIndex
CREATE INDEX "LinkGuesses_minuteFrom_idx" ON "LinkGuesses"("minuteFrom");

-- AddForeignKey
ALTER TABLE "SignedLink" ADD CONSTRAINT "SignedLink_jobId_fkey" FOREIGN KEY ("jobId") REFERENCES "Job"("id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "LinkSession" ADD CONSTRAINT "LinkSession_linkId_fkey" FOREIGN KEY ("linkId") REFERENCES "SignedLink"("id") ON DELETE RESTRICT ON UPDATE CASCADE;
