-- AlterTable
ALTER TABLE "import_files" ADD COLUMN     "etag" TEXT,
ADD COLUMN     "last_modified" TEXT;
