-- AlterTable
ALTER TABLE "WeatherHold" DROP COLUMN "announcedAt";

-- The reminder "weather-against-phase" has no handler any more: notices of weather holds take its place.
UPDATE "Reminder" SET "state" = 'cancelled' WHERE "kind" = 'weather-against-phase' AND "state" = 'pending';
UPDATE "Delivery" SET "state" = 'failed', "error" = 'not sent: holds are told by their own notices now'
FROM "Notice"
WHERE "Notice"."id" = "Delivery"."noticeId" AND "Notice"."kind" = 'weather-against-phase' AND "Delivery"."state" = 'claimed';
