-- Whose files a feed's schedule publishes. Of those that are there: what has a tag came from its feed's place, and the others
-- were handed in by whoever asked for their first import. null: nobody did, or a process of 0.1.0 that runs beside this one wrote it.

-- AlterTable
ALTER TABLE "import_files" ADD COLUMN     "handed_in_by" TEXT;

UPDATE "import_files" SET "handed_in_by" = 'place' WHERE "etag" IS NOT NULL OR "last_modified" IS NOT NULL;
UPDATE "import_files" f SET "handed_in_by" = (
  SELECT r."asked_by" FROM "import_runs" r WHERE r."file_id" = f."id" ORDER BY r."created_at", r."id" LIMIT 1
) WHERE f."handed_in_by" IS NULL;
