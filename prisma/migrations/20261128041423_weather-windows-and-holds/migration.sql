-- AlterTable
ALTER TABLE "Forecast" ADD COLUMN     "earlierHours" JSONB NOT NULL DEFAULT '[]';

-- AlterTable
ALTER TABLE "WeatherHold" ADD COLUMN     "announcedAt" TIMESTAMPTZ(3),
ADD COLUMN     "basis" JSONB,
ADD COLUMN     "openedAt" TIMESTAMPTZ(3),
ADD COLUMN     "openedFor" TEXT,
ADD COLUMN     "tellings" INTEGER NOT NULL DEFAULT 0,
ADD COLUMN     "told" JSONB;

-- AlterTable
ALTER TABLE "WeatherLimitSet" ADD COLUMN     "requirements" JSONB;

-- AlterTable
ALTER TABLE "Site" ADD COLUMN     "weatherPrint" TEXT;
