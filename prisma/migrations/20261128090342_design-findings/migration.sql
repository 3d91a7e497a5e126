-- AlterTable
ALTER TABLE "Job" ADD COLUMN     "designFindings" JSONB;
