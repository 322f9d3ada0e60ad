-- AlterTable
ALTER TABLE "import_runs" ADD COLUMN     "due_at" TIMESTAMPTZ(3),
ADD COLUMN     "fetches_failed" INTEGER NOT NULL DEFAULT 0;
