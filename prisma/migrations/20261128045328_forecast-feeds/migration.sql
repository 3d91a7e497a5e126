-- CreateEnum
CREATE TYPE "ForecastSource" AS ENUM ('uploaded', 'nationalService', 'openHourly');

-- AlterTable
ALTER TABLE "Forecast" ADD COLUMN     "setAsideAt" TIMESTAMPTZ(3);

-- AlterTable
ALTER TABLE "Site" ADD COLUMN     "forecastSource" "ForecastSource" NOT NULL DEFAULT 'uploaded';

-- CreateTable
CREATE TABLE "ForecastFeed" (
    "siteId" UUID NOT NULL,
    "companyId" UUID NOT NULL,
    "dueAt" TIMESTAMPTZ(3) NOT NULL,
    "generation" INTEGER NOT NULL DEFAULT 1,
    "queuedAt" TIMESTAMPTZ(3),
    "address" TEXT,
    "etag" TEXT,
    "lastModified" TEXT,
    "fetchedAt" TIMESTAMPTZ(3),
    "forecastId" UUID,
    "failures" INTEGER NOT NULL DEFAULT 0,
    "failedAt" TIMESTAMPTZ(3),
    "failure" TEXT,

    CONSTRAINT "ForecastFeed_pkey" PRIMARY KEY ("siteId")
);

-- CreateIndex
CREATE INDEX "ForecastFeed_dueAt_idx" ON "ForecastFeed"("dueAt");

-- AddForeignKey
ALTER TABLE "ForecastFeed" ADD CONSTRAINT "ForecastFeed_siteId_fkey" FOREIGN KEY ("siteId") REFERENCES "Site"("id") ON DELETE RESTRICT ON UPDATE CASCADE;
