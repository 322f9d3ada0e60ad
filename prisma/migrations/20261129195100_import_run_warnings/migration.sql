-- AlterTable
ALTER TABLE "import_runs" ADD COLUMN     "warnings" JSONB NOT NULL DEFAULT '[]';
