-- AlterTable
ALTER TABLE "import_files" ADD COLUMN     "mended" BOOLEAN NOT NULL DEFAULT false;

-- Until now they were known by the name that settling gave them, and by a run that no limit stops.
UPDATE "import_files" f SET "mended" = true
  WHERE f."name" ~ '^line [0-9]+, mended$'
    AND EXISTS (SELECT 1 FROM "import_runs" r WHERE r."file_id" = f."id" AND r."force");
