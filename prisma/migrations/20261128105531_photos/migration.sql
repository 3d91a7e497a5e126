-- CreateTable
CREATE TABLE "PhotoFile" (
    "companyId" UUID NOT NULL,
    "hash" TEXT NOT NULL,
    "bytes" BYTEA NOT NULL,
    "width" INTEGER NOT NULL,
    "height" INTEGER NOT NULL,
    "small" BYTEA NOT NULL,

    CONSTRAINT "PhotoFile_pkey" PRIMARY KEY ("companyId","hash")
);

-- CreateTable
CREATE TABLE "Photo" (
    "id" UUID NOT NULL,
    "companyId" UUID NOT NULL,
    "jobId" UUID NOT NULL,
    "phaseId" UUID NOT NULL,
    "holdPointId" UUID,
    "sentHash" TEXT NOT NULL,
    "fileHash" TEXT NOT NULL,
    "caption" TEXT,
    "takenAt" TIMESTAMPTZ(3) NOT NULL,
    "takenById" UUID,
    "addedAt" TIMESTAMPTZ(3) NOT NULL,
    "releasedAt" TIMESTAMPTZ(3),
    "releasedById" UUID,
    "revision" INTEGER NOT NULL DEFAULT 1,

    CONSTRAINT "Photo_pkey" PRIMARY KEY ("id")
);

-- CreateIndex
CREATE INDEX "Photo_jobId_takenAt_idx" ON "Photo"("jobId", "takenAt");

-- CreateIndex
CREATE INDEX "Photo_companyId_fileHash_idx" ON "Photo"("companyId", "fileHash");

-- CreateIndex
CREATE UNIQUE INDEX "Photo_phaseId_sentHash_key" ON "Photo"("phaseId", "sentHash");

-- AddForeignKey
ALTER TABLE "Photo" ADD CONSTRAINT "Photo_jobId_fkey" FOREIGN KEY ("jobId") REFERENCES "Job"("id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "Photo" ADD CONSTRAINT "Photo_phaseId_fkey" FOREIGN KEY ("phaseId") REFERENCES "Phase"("id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "Photo" ADD CONSTRAINT "Photo_holdPointId_fkey" FOREIGN KEY ("holdPointId") REFERENCES "HoldPoint"("id") ON DELETE SET NULL ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "Photo" ADD CONSTRAINT "Photo_companyId_fileHash_fkey" FOREIGN KEY ("companyId", "fileHash") REFERENCES "PhotoFile"("companyId", "hash") ON DELETE RESTRICT ON UPDATE CASCADE;
